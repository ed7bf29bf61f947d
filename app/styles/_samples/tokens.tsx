import styles from '../styles.module.css';

const grounds = [
  'bench',
  'paper',
  'paper-raised',
  'paper-sunk',
  'brass-ground',
  'verdigris-ground',
  'alarm-ground',
] as const;
const inks = ['ink', 'ink-soft', 'brass', 'verdigris', 'alarm'] as const;
const lines = ['rule', 'rule-strong', 'brass-bright', 'wave', 'wave-played'] as const;
const sizes = ['small', 'text', 'large', 'head'] as const;

/** Colours by what they are for, and type by face and size. */
export function Tokens() {
  return (
    <>
      <section className={styles.sheet} aria-labelledby="grounds">
        <h2 id="grounds">Grounds and inks</h2>
        <ul className={styles.swatches}>
          {grounds.map((ground) => (
            <li key={ground} className={styles.swatch} style={{ background: `var(--${ground})` }}>
              <code>{ground}</code>
              {inksOn(ground).map((ink) => (
                <span key={ink} style={{ color: `var(--${ink})` }}>
                  {ink}
                </span>
              ))}
            </li>
          ))}
        </ul>
      </section>
      <section className={styles.sheet} aria-labelledby="lines">
        <h2 id="lines">Lines</h2>
        <ul className={styles.swatches}>
          {lines.map((line) => (
            <li key={line} className={styles.line} style={{ borderColor: `var(--${line})` }}>
              <code>{line}</code>
            </li>
          ))}
        </ul>
      </section>
      <section className={styles.sheet} aria-labelledby="type">
        <h2 id="type">Type</h2>
        {sizes.map((size) => (
          <div key={size} className={styles.type} style={{ fontSize: `var(--size-${size})` }}>
            <code>{size}</code>
            <span>Neck pickup crackles</span>
            <span className={styles.label}>Neck pickup crackles</span>
            <span className="figures">7.94 kΩ 12:03.250</span>
          </div>
        ))}
      </section>
    </>
  );
}

/** The bench and the coloured grounds carry plain ink only: nothing else keeps 4.5:1 on them. */
function inksOn(ground: (typeof grounds)[number]): readonly (typeof inks)[number][] {
  return ground.startsWith('paper') ? inks : ['ink'];
}

import { ConductorSwatch } from '@/app/jobs/[job]/_trace/conductor-swatch';
import { isConductorColour, readConductor } from '@/lib/wiring';
import styles from './reference.module.css';

/** A conductor drawn in its colours, with its letters (IEC 60757) and its name. */
export function Conductor({ name }: { name: string }) {
  const colour = isConductorColour(name) ? readConductor(name) : null;
  return (
    <span className={styles.conductor}>
      <ConductorSwatch colours={colour?.colours ?? []} bare={colour === null} />
      {colour && <span className="figures">{colour.code}</span>} {colour ? name : bareWords(name)}
    </span>
  );
}

function bareWords(name: string): string {
  return name === 'shield' ? 'bare shield' : name === 'frame' ? 'metal frame' : name;
}

interface CableProps {
  conductors: readonly { name: string }[];
  shield: boolean;
  frame?: boolean;
}

export function Cable({ conductors, shield, frame = false }: CableProps) {
  const names = [
    ...conductors.map(({ name }) => name),
    ...(shield ? ['shield'] : []),
    ...(frame ? ['frame'] : []),
  ];
  return (
    <ul className={styles.cable} aria-label="Conductors">
      {names.map((name) => (
        <li key={name}>
          <Conductor name={name} />
        </li>
      ))}
    </ul>
  );
}

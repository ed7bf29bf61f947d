import styles from '../settings.module.css';

const thisMachine = ['127.0.0.1', 'localhost', '::1'];

/** Whether other devices can reach this bench, and how to change it. */
export function WhoMayOpen({ host }: { host: string }) {
  const alone = thisMachine.includes(host);
  return (
    <section className={styles.sheet} aria-labelledby="who">
      <h2 id="who">Who may open it</h2>
      {alone ? (
        <>
          <p>
            <strong>This machine only.</strong> No other device can reach Benchtake, and it asks nothing of
            the internet.
          </p>
          <p>
            To use it from a tablet in the workshop, stop it and start it with{' '}
            <code>HOST=0.0.0.0 npm start</code>. There is no password: do that only in a network where you
            trust everybody.
          </p>
        </>
      ) : (
        <>
          <p className={styles.unreachable}>
            <strong>Every device in the network of {host} that can reach this machine.</strong>
          </p>
          <p>
            There is no password. Start Benchtake without <code>HOST</code> to keep it to this machine.
          </p>
        </>
      )}
    </section>
  );
}

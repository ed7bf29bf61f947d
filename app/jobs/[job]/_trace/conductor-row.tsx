import { readConductor } from '@/lib/wiring';
import type { TraceAnalysis } from '@/shared/wiring';
import { ConductorSwatch } from './conductor-swatch';
import styles from './trace.module.css';

/** The cable end as it lies on the mat: each conductor drawn in its colours and lettered. */
export function ConductorRow({ analysis }: { analysis: TraceAnalysis }) {
  return (
    <ul className={styles.conductors} aria-label="Conductors">
      {analysis.conductors.map(({ name, code }) => (
        <li key={code}>
          <ConductorSwatch colours={readConductor(name).colours} />
          <span className="figures">{code}</span> {name}
        </li>
      ))}
      {analysis.shield && (
        <li>
          <ConductorSwatch colours={[]} bare />
          bare shield
        </li>
      )}
      {analysis.frame && (
        <li>
          <ConductorSwatch colours={[]} bare />
          metal frame
        </li>
      )}
    </ul>
  );
}

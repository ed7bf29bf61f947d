import { conductorInks, drawPlan } from '@/lib/wiring';
import type { Plan, TraceAnalysis } from '@/shared/wiring';
import styles from './trace.module.css';

type Drawing = ReturnType<typeof drawPlan>;

/** A wiring plan as a drawing: readable in black on white, each conductor lettered and dashed in its own way. */
export function PlanDrawing({ plan, analysis }: { plan: Plan; analysis: TraceAnalysis }) {
  const drawing = drawPlan(plan, analysis);
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      role="img"
      aria-label={`${drawing.title}. ${drawing.description}`}
    >
      {drawing.coils.map((coil) => (
        <DrawnCoil key={coil.key} coil={coil} />
      ))}
      {drawing.wires.map((wire) => (
        <DrawnWire key={wire.name} wire={wire} />
      ))}
      {drawing.nodes.map((node) => (
        <g key={node.id} transform={`translate(${node.x} ${node.y})`}>
          <NodeShape shape={node.shape} />
          <text x="22" y="0" className={styles.nodeLabel}>
            {node.label}
          </text>
          <text x="22" y="14" className={styles.nodePlace}>
            {node.place} ({node.basis})
          </text>
        </g>
      ))}
    </svg>
  );
}

function DrawnCoil({ coil }: { coil: Drawing['coils'][number] }) {
  const turns = Math.max(2, Math.floor(coil.height / 14));
  const step = coil.height / turns;
  const winding = Array.from(
    { length: turns },
    (_, at) => `M${coil.x + 8} ${coil.y + at * step + 3}q${coil.width - 16} ${step / 2 - 3} 0 ${step - 3}`,
  ).join('');
  return (
    <g>
      <rect
        x={coil.x}
        y={coil.y}
        width={coil.width}
        height={coil.height}
        rx="6"
        className={styles.coil}
        strokeDasharray={coil.basis === 'measured' ? undefined : '6 4'}
      />
      <path d={winding} className={styles.winding} />
      <text x={coil.x + 6} y={coil.y - 5} className={styles.nodePlace}>
        {coil.label}
      </text>
      <text
        x={coil.x + coil.width / 2}
        y={coil.y + coil.height / 2 + 4}
        textAnchor="middle"
        className={styles.coilValue}
      >
        {coil.value}
      </text>
      {coil.positiveAt && (
        <text x={coil.positiveAt.x - 10} y={coil.positiveAt.y + 5} className={styles.plus}>
          +
        </text>
      )}
    </g>
  );
}

function DrawnWire({ wire }: { wire: Drawing['wires'][number] }) {
  const points = wire.points.map(({ x, y }) => `${x},${y}`).join(' ');
  const [ground, stripe] = wire.colours;
  return (
    <g fill="none" strokeLinejoin="round">
      <polyline points={points} stroke="var(--ink)" strokeWidth="7" />
      <polyline
        points={points}
        stroke={ground ? conductorInks[ground] : 'var(--paper-raised)'}
        strokeWidth="5"
      />
      {stripe && (
        <polyline points={points} stroke={conductorInks[stripe]} strokeWidth="2.5" strokeDasharray="8 8" />
      )}
      <polyline
        points={points}
        stroke={ground === 'black' ? '#fff' : '#000'}
        strokeWidth="1"
        strokeDasharray={wire.dash.join(' ')}
        opacity="0.75"
      />
      <text x={wire.label.x} y={wire.label.y} className={styles.wireLabel} stroke="none">
        {wire.label.text}
      </text>
    </g>
  );
}

/** Shape stands for the role: flag for hot, knot for a joint, bars for ground, cap for an insulated end. */
function NodeShape({ shape }: { shape: Drawing['nodes'][number]['shape'] }) {
  if (shape === 'flag') return <path d="M0 10V-12L16 -6 0 0" className={styles.nodeShape} />;
  if (shape === 'knot') return <circle r="7" className={styles.nodeShape} />;
  if (shape === 'earth') return <path d="M0 -8V2M-9 2H9M-6 6H6M-3 10H3" className={styles.nodeLine} />;
  return <path d="M-2 -6H8A6 6 0 0 1 8 6H-2z" className={styles.nodeShape} />;
}

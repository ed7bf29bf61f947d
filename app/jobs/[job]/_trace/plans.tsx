'use client';

import { Button } from '@/app/_parts/button';
import { cautions } from '@/lib/safety';
import { sayOhms } from '@/lib/wiring';
import type { TraceView } from '@/shared/traces';
import type { Plan } from '@/shared/wiring';
import { BasisWord } from './basis-word';
import { PlanDrawing } from './plan-drawing';
import styles from './trace.module.css';

interface PlansProps {
  trace: TraceView;
  onChoose: (planId: string) => void;
  onJoin: (planId: string) => void;
}

/** The ways this pickup can be wired; the chosen one drawn, with its joints in order and its check. */
export function Plans({ trace, onChoose, onJoin }: PlansProps) {
  const { plans, unavailable, worksheet } = trace;
  const chosen = plans.find((plan) => plan.id === worksheet.planId) ?? plans[0];
  return (
    <>
      {plans.length > 0 && (
        <fieldset className={styles.planList}>
          <legend className="only-read">Plan</legend>
          {plans.map((plan) => (
            <label key={plan.id} className={styles.planChoice} data-chosen={plan === chosen || undefined}>
              <input
                type="radio"
                name="plan"
                value={plan.id}
                checked={plan === chosen}
                onChange={() => onChoose(plan.id)}
              />
              <span>{plan.title}</span>
              <span className="figures">
                {plan.predictedOhms === null ? '–' : sayOhms(plan.predictedOhms)}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      {unavailable.length > 0 && (
        <p className={styles.fine}>{unavailable.map(({ kind, why }) => `${kind}: ${why}`).join(' · ')}</p>
      )}
      {chosen && <ChosenPlan plan={chosen} trace={trace} onJoin={onJoin} />}
    </>
  );
}

function ChosenPlan({
  plan,
  trace,
  onJoin,
}: {
  plan: Plan;
  trace: TraceView;
  onJoin: (planId: string) => void;
}) {
  return (
    <div className={styles.plan}>
      <PlanDrawing plan={plan} analysis={trace.analysis} />
      <dl className={styles.facts}>
        <div>
          <dt>Predicted</dt>
          <dd className="figures">{prediction(plan)}</dd>
        </div>
        <div>
          <dt>Strings add</dt>
          <dd>{plan.stringsAdd}</dd>
        </div>
        <div>
          <dt>Hum cancels</dt>
          <dd>{plan.humCancels}</dd>
        </div>
        <div>
          <dt>Known</dt>
          <dd>
            <BasisWord basis={plan.basis} />
          </dd>
        </div>
      </dl>
      {plan.unknowns.length > 0 && <p className={styles.warn}>Not known yet: {plan.unknowns.join('; ')}.</p>}
      <p className={styles.fine}>{cautions.soldering}</p>
      <ol className={styles.steps}>
        {plan.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {plan.notes.map((note) => (
        <p key={note} className={styles.fine}>
          {note}
        </p>
      ))}
      <Check trace={trace} />
      <Button weight="main" onClick={() => onJoin(plan.id)}>
        Joined like this, at this moment
      </Button>
    </div>
  );
}

function Check({ trace }: { trace: TraceView }) {
  const { check } = trace;
  if (!check)
    return (
      <p className={styles.fine}>
        No total yet: once joined, note it as “{trace.worksheet.subject} total …” and it is held against this
        plan.
      </p>
    );
  return (
    <div className={styles.check} data-verdict={check.verdict}>
      <p className={styles.verdict}>{check.verdict}</p>
      <p>{check.text}</p>
      {check.alsoFits.length > 0 && (
        <p className={styles.fine}>The same number also fits: {check.alsoFits.join(', ')}.</p>
      )}
      {check.assumptions.map((assumption) => (
        <p key={assumption} className={styles.fine}>
          {assumption}
        </p>
      ))}
    </div>
  );
}

function prediction(plan: Plan): string {
  if (plan.predictedOhms === null) return 'not yet';
  const margin = plan.predictedUncertaintyOhms;
  return margin === null
    ? sayOhms(plan.predictedOhms)
    : `${sayOhms(plan.predictedOhms)} ± ${sayOhms(Number(margin.toPrecision(2)))}`;
}

import { clientsIn } from './clients';
import { basisIn, hintsIn } from './hints';
import { instrumentsIn } from './instruments';
import { type MakePart, partMaker } from './part-ids';
import { asQuestion, type Finding, type Question, type QuestionContext } from './question';
import { type Rest, restOf, spend } from './rest';
import { termsIn } from './terms';
import { timesIn } from './time/phrases';
import { saySpan } from './time/say-span';
import { valuesIn } from './values/values';

export {
  type Finding,
  type Question,
  type QuestionContext,
  type QuestionTerm,
  type QuestionValue,
  withoutParts,
} from './question';

/** What a person can mean to ask at once, in characters. */
const longestQuestion = 2000;

/**
 * Reads a question as a busy repairer types it. Nothing typed is refused: what cannot be understood is looked
 * for as words, and what holds no words gives an empty question.
 */
export function readQuestion(q: string, context: QuestionContext): Question {
  const rest = restOf(q.slice(0, longestQuestion));
  const makePart = partMaker();
  const clients = clientsIn(rest, context.clients, makePart);
  const times = timesAsked(rest, context, makePart);
  const values = valuesIn(rest, makePart);
  const basis = basisIn(rest, makePart);
  const hints = hintsIn(rest, makePart);
  const instruments = instrumentsIn(rest, context.instrumentTypes, makePart);
  const types = instruments.flatMap((each) => each.instruments ?? []);
  const terms = termsIn(rest, context, types, makePart);
  const findings = [...times, ...values, ...instruments, ...hints, ...basis, ...clients, ...terms];
  return asQuestion(findings);
}

function timesAsked(rest: Rest, context: QuestionContext, makePart: MakePart): Finding[] {
  return timesIn(rest.left, context).map(({ start, end, span }) => {
    const said = spend(rest, start, end);
    return { part: makePart('time', said, saySpan(span)), span };
  });
}

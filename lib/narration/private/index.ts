import type { Draft } from '../rules/proposal';
import type { Talk } from '../rules/talk';
import type { TokenSpan } from '../words/token';
import { findAddresses } from './addresses';
import { findEmails } from './emails';
import type { NameFound } from './names';

export { findNames } from './names';

import { findPhones } from './phones';

type Reason = Extract<Draft, { type: 'private' }>['payload']['reason'];

const draft = (span: TokenSpan, reason: Reason, confidence: number): Draft => ({
  type: 'private',
  from: span.from,
  to: span.to,
  confidence,
  about: null,
  payload: { reason },
});

const overlaps = (span: TokenSpan, others: readonly TokenSpan[]): boolean =>
  others.some((other) => span.from < other.to && other.from < span.to);

/** What must not be heard in the public cut: names, telephone numbers, e-mail and street addresses. */
export function findPrivate(talk: Talk, allNames: readonly NameFound[]): Draft[] {
  const emails = findEmails(talk);
  const phones = findPhones(talk).filter((span) => !overlaps(span, emails));
  const addresses = findAddresses(talk).filter((span) => !overlaps(span, [...emails, ...phones]));
  const taken = [...emails, ...phones, ...addresses];
  const names = allNames.filter((span) => !overlaps(span, taken));
  return [
    ...emails.map((span) => draft(span, 'email', 0.95)),
    ...phones.map((span) => draft(span, 'phone', 0.9)),
    ...addresses.map((span) => draft(span, 'address', 0.85)),
    ...names.map((span) => draft(span, 'name', span.confidence)),
  ];
}

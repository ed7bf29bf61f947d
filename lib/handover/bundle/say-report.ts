import type { BundleReport } from '@/shared/bundle';

type Facts = Omit<BundleReport, 'said'>;

/**
 * What became of a bundle, in plain sentences.
 * @param folder where missing recordings are looked for; null where it is not needed
 */
export function sayReport(facts: Facts, number: number, folder: string | null): string[] {
  return [
    `It was job ${facts.numberBefore} where it comes from; here it is job ${number}.`,
    ...sayBefore(facts),
    ...sayEntries(facts),
    ...sayRecordings(facts, folder),
  ];
}

function sayBefore({ before }: Facts): string[] {
  if (before.length === 0) return [];
  const numbers = before.map((job) => `job ${job.number}`).join(', ');
  return [
    `It was here already, as ${numbers}: both stand side by side, and nothing of the other was changed.`,
  ];
}

function sayEntries({ client, instrument }: Facts): string[] {
  return [
    ...(client === 'known' ? ['The client was known here already: the entry is used as it stands.'] : []),
    ...(client === 'new' ? ['The client is a new entry.'] : []),
    instrument === 'known'
      ? 'The instrument was known here already: the entry is used as it stands.'
      : 'The instrument is a new entry.',
  ];
}

function sayRecordings({ recordings }: Facts, folder: string | null): string[] {
  const namesOf = (how: Facts['recordings'][number]['how']) =>
    recordings.filter((each) => each.how === how).map(({ name }) => `“${name}”`);
  const [found, brought, missing] = [namesOf('found'), namesOf('brought'), namesOf('missing')];
  return [
    ...(found.length > 0 ? [`Found in the recordings folders: ${found.join(', ')}.`] : []),
    ...(brought.length > 0 ? [`Came with the bundle: ${brought.join(', ')}.`] : []),
    ...(missing.length > 0 ? [`Missing: ${missing.join(', ')}. Nothing on the record is lost.`] : []),
    ...(missing.length > 0 && folder !== null
      ? [`Put what is missing into ${folder}, or name its folder under Settings and press “Look for it”.`]
      : []),
  ];
}

import { type ExportScope, type ExportTable, giveOutQuerySchema } from '@/shared/archive-exports';

/** The part of the archive that was chosen, as it stands in the address of the page. */
export type Chosen = Readonly<Partial<Record<ChosenName, string>>>;
const names = ['instrument', 'kind', 'basis', 'from', 'to', 'reading', 'low', 'high', 'without'] as const;
type ChosenName = (typeof names)[number];

/** What an address chooses; all of the archive where it says nothing that can be read. */
export function readChosen(search: string): Chosen {
  const typed = new URLSearchParams(search);
  const chosen = Object.fromEntries(
    names.flatMap((name) => (typed.get(name) ? [[name, typed.get(name)]] : [])),
  );
  return giveOutQuerySchema.safeParse(chosen).success ? chosen : {};
}

/** What stands behind the question mark; empty for all of the archive. */
export function searchOf(chosen: Chosen): string {
  const told = names.flatMap((name) => (chosen[name] ? [[name, chosen[name]]] : []));
  return new URLSearchParams(told).toString();
}

export function ticketsOf({ without = '' }: Chosen): number[] {
  return without.split(',').filter(Boolean).map(Number);
}

/** With a job left out by hand, or taken in again. */
export function withTicket(chosen: Chosen, number: number, isLeftOut: boolean): Chosen {
  const others = ticketsOf(chosen).filter((other) => other !== number);
  return { ...chosen, without: (isLeftOut ? [...others, number] : others).join(',') };
}

const routes = '/api/archive/exports';

export function previewRoute(chosen: Chosen): string {
  return address(`${routes}/preview`, searchOf(chosen));
}

export const downloads = {
  pages: (chosen: Chosen) => address(`${routes}/pages`, searchOf(chosen)),
  json: (chosen: Chosen, scope: ExportScope) => address(`${routes}/json`, searchOf(chosen), { scope }),
  csv: (chosen: Chosen, scope: ExportScope, which: ExportTable) =>
    address(`${routes}/csv`, searchOf(chosen), { scope, which }),
};

function address(route: string, search: string, more: Record<string, string> = {}): string {
  const query = new URLSearchParams([...new URLSearchParams(search), ...Object.entries(more)]).toString();
  return query === '' ? route : `${route}?${query}`;
}

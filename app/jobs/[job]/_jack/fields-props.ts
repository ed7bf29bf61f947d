import type { HarnessDraft } from './draft';

export interface FieldsProps {
  draft: HarnessDraft;
  onChange: (patch: Partial<HarnessDraft>) => void;
}

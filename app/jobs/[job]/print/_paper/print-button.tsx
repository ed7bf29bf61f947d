'use client';

import { Button } from '@/app/_parts/button';

export function PrintButton() {
  return (
    <Button weight="main" onClick={() => window.print()}>
      Print
    </Button>
  );
}

'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { useNotices } from '@/app/_parts/notices';

interface CopyButtonProps {
  label: string;
  told: string;
  /** Makes the text when it is wanted. */
  text: () => string | Promise<string>;
  main?: boolean;
}

/** Copies a text; afterwards it says so, until something else is copied by it. */
export function CopyButton({ label, told, text, main = false }: CopyButtonProps) {
  const { done, wrong } = useNotices();
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(await text());
      setCopied(true);
      done(told);
    } catch (error) {
      setCopied(false);
      wrong(error);
    }
  };
  return (
    <Button weight={main ? 'main' : 'plain'} onClick={() => void copy()} onBlur={() => setCopied(false)}>
      {copied ? 'Copied' : label}
    </Button>
  );
}

'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { useNotices } from '@/app/_parts/notices';

interface CopyButtonProps {
  label: string;
  told: string;
  /** Makes the text when it is wanted. */
  text: () => string | Promise<string>;
  /** What the text is made from: once that is another, what was copied is old. */
  of: string;
  main?: boolean;
}

/** Copies a text; afterwards it says so, until there would be another one to copy. */
export function CopyButton({ label, told, text, of, main = false }: CopyButtonProps) {
  const { done, wrong } = useNotices();
  const [copied, setCopied] = useState<string | null>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(await text());
      setCopied(of);
      done(told);
    } catch (error) {
      setCopied(null);
      wrong(error);
    }
  };
  return (
    <Button weight={main ? 'main' : 'plain'} onClick={() => void copy()}>
      {copied === of ? 'Copied' : label}
    </Button>
  );
}

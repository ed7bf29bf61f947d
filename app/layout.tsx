import type { Metadata, Viewport } from 'next';
import { headers } from 'next/headers';
import './_look/base.css';
import { Shell } from './_parts/shell';

export const metadata: Metadata = { title: { default: 'Benchtake', template: '%s · Benchtake' } };
export const viewport: Viewport = { width: 'device-width', initialScale: 1 };

/** Every page is made when asked for: each answer carries a nonce of its own. */
export default async function Layout({ children }: { children: React.ReactNode }) {
  const policy = (await headers()).get('content-security-policy') ?? '';
  const nonce = /'nonce-([^']+)'/.exec(policy)?.[1];
  return (
    <html lang="en">
      <body>
        <Shell nonce={nonce}>{children}</Shell>
      </body>
    </html>
  );
}

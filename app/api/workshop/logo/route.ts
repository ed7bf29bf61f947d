import { logoOf, removeLogo, setLogo } from '@/lib/handover/store';
import { DomainError } from '@/shared/problem';
import { bytes, route } from '../../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => {
  const logo = logoOf();
  if (!logo) throw new DomainError('not-found', 'There is no logo yet.', 'Choose one under Settings.');
  const type = logo[0] === 0x89 ? 'image/png' : 'image/jpeg';
  return new Response(Buffer.from(logo), { headers: { 'content-type': type, 'cache-control': 'no-store' } });
});

export const PUT = route(async (request) => {
  setLogo(await bytes(request));
  return Response.json({});
});

export const DELETE = route(() => {
  removeLogo();
  return Response.json({});
});

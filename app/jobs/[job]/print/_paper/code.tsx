import { qrCode } from '@/lib/work';

/** The QR code of an address, black on white whatever the light: readers want it so. */
export function Code({ address, className }: { address: string; className?: string }) {
  const { size, path } = qrCode(address);
  return (
    <svg
      className={className}
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={`QR code: ${address}`}
      shapeRendering="crispEdges"
    >
      <path d={`M0 0h${size}v${size}H0z`} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}

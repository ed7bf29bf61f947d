import { ArchiveWays } from './_question/archive-ways';

export default function ArchiveLayout({ children }: { children: React.ReactNode }) {
  return (
    <>
      <ArchiveWays />
      {children}
    </>
  );
}

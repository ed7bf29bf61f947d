/** The key that does what a button does; for the eye only, since the keys stand on their own card. */
export function KeyHint({ children }: { children: React.ReactNode }) {
  return (
    <span aria-hidden="true">
      <kbd>{children}</kbd>
    </span>
  );
}

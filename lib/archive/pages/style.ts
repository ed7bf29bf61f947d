/** The style of the pages that go out: one file, no request to elsewhere. Text keeps 4.5:1 (WCAG 2.2, 1.4.3) in both lights. */
export const pagesStyle = `:root {
  color-scheme: light dark;
  --ground: #f7f3ea;
  --paper: #fdfbf5;
  --ink: #24211c;
  --soft: #5b5346;
  --rule: #cabd9f;
  --way: #6f480c;
}
@media (prefers-color-scheme: dark) {
  :root {
    --ground: #171613;
    --paper: #211f1b;
    --ink: #f0e9db;
    --soft: #bdb29e;
    --rule: #4a4438;
    --way: #e2b159;
  }
}
* { box-sizing: border-box; }
body {
  max-width: 62rem;
  margin: 0 auto;
  padding: 1rem clamp(0.75rem, 3vw, 2rem) 4rem;
  background: var(--ground);
  color: var(--ink);
  font: 1rem/1.5 system-ui, sans-serif;
  overflow-wrap: anywhere;
}
h1, h2, h3 { line-height: 1.2; }
h2 { margin-top: 2rem; border-bottom: 2px solid var(--rule); padding-bottom: 0.25rem; }
a { color: var(--way); }
a:focus-visible, input:focus-visible, button:focus-visible, .wide:focus-visible {
  outline: 3px solid var(--way);
  outline-offset: 2px;
}
:target { background: var(--paper); outline: 2px solid var(--way); outline-offset: 4px; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.5rem; padding: 0; list-style: none; }
nav a, .jobs a, #found a { display: inline-block; padding: 0.35rem 0; }
.soft { color: var(--soft); }
.jobs, #found { padding: 0; list-style: none; }
.jobs li, #found > li { padding: 0.2rem 0; border-bottom: 1px solid var(--rule); }
#found ul { margin: 0; padding: 0 0 0.4rem 1.25rem; }
.figures, td.figures { font-family: ui-monospace, monospace; }
.kind { display: inline-block; border: 1px solid var(--soft); border-radius: 3px; padding: 0 0.4rem; font-size: 0.875rem; }
.chapters { padding: 0; list-style: none; }
.chapters li { padding: 0.35rem 0; border-bottom: 1px solid var(--rule); }
.chapters p { margin: 0.1rem 0; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; background: var(--paper); }
caption { text-align: start; padding: 0.3rem 0; color: var(--soft); }
th, td { border: 1px solid var(--rule); padding: 0.25rem 0.6rem; text-align: start; vertical-align: top; overflow-wrap: normal; }
form { display: flex; flex-wrap: wrap; align-items: end; gap: 0.5rem; }
form[hidden] { display: none; }
label { flex-basis: 100%; }
input { flex: 1 1 14rem; min-width: 0; }
input, button {
  min-height: 2.75rem;
  padding: 0.4rem 0.8rem;
  border: 1px solid var(--soft);
  border-radius: 3px;
  background: var(--paper);
  color: inherit;
  font: inherit;
}
footer { margin-top: 3rem; color: var(--soft); }
@media print {
  body { background: none; color: #000; max-width: none; }
  nav, form { display: none; }
  h2, h3 { break-after: avoid; }
  tr, li { break-inside: avoid; }
  .wide { overflow: visible; }
}
`;

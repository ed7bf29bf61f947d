/** @type {import('next').NextConfig} */
export default {
  // Partial answers must not be gzipped; the app is served on one machine or one bench network.
  compress: false,
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ['better-sqlite3', 'node-av', 'pdfkit', 'fontkit'],
  devIndicators: false,
  // Browsers ask for it by this name before they have read the page's head.
  rewrites: async () => [{ source: '/favicon.ico', destination: '/icon.svg' }],
  // `npm test` holds the types; the first start on a repairer's machine need not wait for them again.
  typescript: { ignoreBuildErrors: true },
};

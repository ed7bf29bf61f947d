/** A table as a file to save: text/csv with a header line (RFC 4180, section 3). */
export function csvAnswer(name: string, table: string): Response {
  return new Response(table, {
    headers: {
      'content-type': 'text/csv; charset=utf-8; header=present',
      'content-disposition': `attachment; filename="${name}.csv"`,
    },
  });
}

/** What KaTeX makes of some TeX in its strictest mode, and what it warned of. */
export async function layOut(
  tex: string,
): Promise<{ html: string; warnings: string[] }> {
  const katex = await import('katex');
  const warnings: string[] = [];
  const before = console.warn;
  console.warn = (...said: unknown[]) => warnings.push(said.join(' '));
  try {
    const html = katex.default.renderToString(tex, {
      displayMode: true,
      throwOnError: true,
      strict: 'error',
    });
    return { html, warnings };
  } finally {
    console.warn = before;
  }
}

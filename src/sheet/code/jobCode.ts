import qrcode from 'qrcode-generator';

/** How much of a code may be lost and it still reads (ISO/IEC 18004): about 15 % at M, 7 % at L. */
export type Correction = 'M' | 'L';

/** A QR code (ISO/IEC 18004) as its modules, row by row from the top; true is dark. Without its quiet zone. */
export interface JobCode {
  readonly is: 'code';
  readonly modules: readonly (readonly boolean[])[];
  readonly correction: Correction;
}

/** What there is to print where the job's code should stand. */
export type PrintedCode =
  | JobCode
  /** `no-address`: the page is open at an address that no other device can reach. */
  | { readonly is: 'too-large' | 'failed' | 'no-address' };

/**
 * The code of a link that ends in digits: those are packed three to ten bits, what stands before them byte by byte. With
 * the stronger correction wherever it fits into the largest code there is (177 modules).
 */
export function codeOf(url: string): PrintedCode {
  const [, head = url, digits = ''] = /^(.*?)(\d*)$/s.exec(url) ?? [];
  for (const correction of ['M', 'L'] as const) {
    const modules = modulesOf(head, digits, correction);
    if (modules) return { is: 'code', modules, correction };
  }
  return { is: 'too-large' };
}

function modulesOf(head: string, digits: string, correction: Correction): boolean[][] | null {
  const code = qrcode(0, correction);
  code.addData(head, 'Byte');
  if (digits !== '') code.addData(digits, 'Numeric');
  try {
    code.make();
  } catch (error) {
    // It throws a text when no code is large enough.
    if (/overflow/.test(String(error))) return null;
    throw error;
  }
  const across = Array.from({ length: code.getModuleCount() }, (_, i) => i);
  return across.map((row) => across.map((column) => code.isDark(row, column)));
}

import { parseSync } from 'vite';

/** What the house's rules look at in one file. Paths are relative to src: `geometry/clip.ts`. */
export interface Source {
  readonly path: string;
  readonly imports: readonly string[];
  readonly hasDefaultExport: boolean;
  /** Names used that the file doesn't make itself, and members: `Date`, `Math.random`, `.toLocaleString`. */
  readonly names: ReadonlySet<string>;
  /** Words that a user would read and that stand in the markup itself. */
  readonly wordsInMarkup: readonly string[];
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string };

const SPOKEN_ATTRIBUTES = new Set([
  'alt',
  'aria-label',
  'aria-description',
  'placeholder',
  'title',
]);
const LETTERS = /\p{L}{2,}/u;

export function readSource(path: string, text: string): Source {
  const { program, errors } = parseSync(path, text, { lang: path.endsWith('x') ? 'tsx' : 'ts' });
  if (errors.length > 0) throw new Error(`${path} can't be read: ${errors[0]?.message}`);
  const imports: string[] = [];
  const names = new Set<string>();
  const bound = new Set<string>();
  const wordsInMarkup: string[] = [];
  let hasDefaultExport = false;

  walk(program as unknown as Node, (node, parent, key) => {
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
      case 'ExportNamedDeclaration':
      case 'ImportExpression':
      case 'TSImportType':
        addText(imports, node['source']);
        break;
      case 'ExportDefaultDeclaration':
        hasDefaultExport = true;
        break;
      case 'NewExpression':
        // A worker's file: new URL('./entry.ts', import.meta.url).
        if (nameOf(node['callee']) === 'URL') addText(imports, (node['arguments'] as unknown[])[0]);
        break;
      case 'MemberExpression': {
        const property = nameOf(node['property']);
        if (property) names.add(`.${property}`);
        if (nameOf(node['object']) === 'Math') names.add(`Math.${property}`);
        break;
      }
      case 'Identifier':
        if (isBinding(parent, key)) bound.add(String(node['name']));
        else if (!isOnlyAKey(node, parent, key)) names.add(String(node['name']));
        break;
      case 'ObjectPattern':
        for (const { value } of node['properties'] as readonly Node[]) {
          const name = nameOf(isNode(value) && 'left' in value ? value['left'] : value);
          if (name) bound.add(name);
        }
        break;
      case 'JSXText':
        if (LETTERS.test(String(node['value']))) wordsInMarkup.push(String(node['value']).trim());
        break;
      case 'JSXAttribute': {
        const value = node['value'] as Node | null;
        const text = value?.type === 'Literal' ? String(value['value']) : '';
        const spoken = SPOKEN_ATTRIBUTES.has(String((node['name'] as Node)['name']));
        if (spoken && LETTERS.test(text)) wordsInMarkup.push(text);
        break;
      }
    }
  });
  // A parameter or variable of the file's own may be called `window`: it isn't the page's.
  for (const name of bound) names.delete(name);
  return { path, imports, hasDefaultExport, names, wordsInMarkup };
}

function walk(
  node: Node,
  visit: (node: Node, parent: Node | undefined, key: string) => void,
  parent?: Node,
  key = '',
): void {
  visit(node, parent, key);
  for (const [name, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child)) walk(child, visit, node, name);
    }
  }
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

/** `a.window`, `{ window: 1 }` and `interface A { window: number }` use no global name. */
function isOnlyAKey(node: Node, parent: Node | undefined, key: string): boolean {
  if (!parent || parent['computed'] === true || parent['shorthand'] === true) return false;
  return key === 'key' || (key === 'property' && node !== parent['object']);
}

/** A name that is made here: a parameter, a variable, an import (destructured ones: see ObjectPattern). */
function isBinding(parent: Node | undefined, key: string): boolean {
  return (
    key === 'params' ||
    key === 'local' ||
    (key === 'id' && parent?.type.endsWith('Declarator') === true)
  );
}

function nameOf(node: unknown): string | undefined {
  return isNode(node) && node.type === 'Identifier' ? String(node['name']) : undefined;
}

function addText(list: string[], node: unknown): void {
  if (isNode(node) && node.type === 'Literal') list.push(String(node['value']));
}

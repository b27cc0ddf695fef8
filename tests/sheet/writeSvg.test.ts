// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { rectangleJob } from '../../src/job/start.ts';
import { printStyle, writeSvg } from '../../src/sheet/writeSvg.ts';
import { FOOT } from '../../src/units/grid.ts';
import { sheetOf, writtenOn } from './made.ts';

function parsed(svg: string): Document {
  return new DOMParser().parseFromString(svg, 'image/svg+xml');
}

describe('the SVG', () => {
  const pages = sheetOf(demoJob());

  test('is well formed, at the paper’s exact size, one unit to the mm', () => {
    for (const [i, page] of pages.entries()) {
      const root = parsed(writeSvg(page, `p${i}`)).documentElement;
      expect(root.getAttribute('width')).toBe('215.9mm');
      expect(root.getAttribute('height')).toBe('279.4mm');
      expect(root.getAttribute('viewBox')).toBe('0 0 215.9 279.4');
    }
    expect(printStyle(pages[0]!)).toBe('@page { size: 215.9mm 279.4mm; margin: 0 }');
  });

  test('says in text all that the page says', () => {
    for (const [i, page] of pages.entries()) {
      const texts = [...parsed(writeSvg(page, `p${i}`)).querySelectorAll('text')];
      expect(texts.map(({ textContent }) => textContent).join('\n')).toBe(writtenOn([page]));
    }
  });

  test('a side of 10 ft is 127 mm at 1/2 in to the foot', () => {
    const job = rectangleJob(10 * FOOT, 8 * FOOT);
    if (!job.ok) throw new Error('no job');
    const svg = writeSvg(sheetOf(job.value, { scale: '1/2" = 1\'-0"' })[0]!, 'p');
    const lengths = [
      ...svg.matchAll(
        /d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)" fill="none" stroke="[^"]+" stroke-width="0.7"/g,
      ),
    ].map(([, ax, ay, bx, by]) => Math.hypot(Number(bx) - Number(ax), Number(by) - Number(ay)));
    expect(lengths.filter((length) => Math.abs(length - 127) < 0.003)).toHaveLength(2);
    expect(lengths.filter((length) => Math.abs(length - 101.6) < 0.003)).toHaveLength(2);
  });

  test('what a person typed can’t become markup', () => {
    const job = { ...demoJob(), name: '<b onload="x">&amp;', site: '"><script>1</script>' };
    const svg = writeSvg(sheetOf(job)[0]!, 'p');
    const document = parsed(svg);
    expect(document.querySelector('script')).toBeNull();
    expect(
      [...document.querySelectorAll('text')].some(({ textContent }) => textContent === job.name),
    ).toBe(true);
  });

  test('names inside keep apart when several pages stand in one document', () => {
    const ids = pages.flatMap((page, i) =>
      [...writeSvg(page, `p${i}`).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id),
    );
    expect(ids.length).toBeGreaterThan(3);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

// Holds plan.pdf in each folder against Poppler's readers: all letters embedded, tagged, every part and step said, nothing
// but A4 or Letter, and the ruler before the drawings true to size.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';

// So many dots to the inch that ten are a millimetre.
const DOTS = 254;
const read = (tool, ...words) => execFileSync(tool, words, { encoding: 'utf8', maxBuffer: 1 << 28 });
const words = text => text.replace(/\s+/g, '');

let failed = 0;
function hold(plan, what, holds) {
  if (!holds) {
    failed++;
    console.error(`${plan}: ${what}`);
  }
}

/** What all names begin with, up to and with a full stop. */
function common(names) {
  let start = names[0] ?? '';
  while (start && !(start.endsWith('.') && names.every(each => each.startsWith(start)))) {
    start = start.slice(0, -1);
  }
  return start;
}

/** The lengths of the long dark lines of a page, in tenths of a millimetre. */
function lines(pgm) {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1'));
  const [wide, high] = [Number(head[1]), Number(head[2])];
  const dots = pgm.subarray(head[0].length);
  const found = new Set();
  for (let y = 0; y < high; y++) {
    let run = 0;
    for (let x = 0; x <= wide; x++) {
      if (x < wide && dots[y * wide + x] < 160) {
        run++;
      } else {
        if (run > 900 && run < 1100) {
          found.add(run);
        }
        run = 0;
      }
    }
  }
  return [...found];
}

const work = mkdtempSync(join(tmpdir(), 'plan-pdf-'));
for (const folder of process.argv.slice(2)) {
  const name = basename(folder);
  const pdf = join(folder, 'plan.pdf');
  const info = read('pdfinfo', pdf);
  const pages = Number(/^Pages:\s+(\d+)/m.exec(info)[1]);
  hold(name, 'has tags', /^Tagged:\s+yes/m.test(info));
  hold(name, 'has a title', /^Title:\s+\S/m.test(info));
  hold(name, 'lies on A4 or Letter', /^Page size:.*\((A4|letter)\)/m.test(info));
  const fonts = read('pdffonts', pdf).split('\n').slice(2).filter(line => line.trim());
  hold(name, 'has fonts', fonts.length > 0);
  fonts.forEach(font => hold(name, `carries its letters: ${font}`, /\syes (yes|no ) (yes|no )\s+\d+\s+\d+\s*$/.test(font)));
  const text = words(read('pdftotext', '-raw', pdf, '-'));
  const plan = JSON.parse(readFileSync(join(folder, 'plan.json'), 'utf8'));
  // What all names begin with is said once and left out.
  const parts = plan.cutList.flatMap(row => row.parts);
  const start = common(parts);
  hold(name, `says that names begin with ${start}`,
    start === '' || (text.includes('eachbeginswith') && text.includes(words(start))));
  parts.forEach(part => hold(name, `names the part ${part}`, text.includes(words(part.slice(start.length)))));
  hold(name, 'numbers its sheets', text.includes(`${pages}of${pages}`));
  const sheet = read('pdftotext', pdf, '-').split('\f').findIndex(one => one.includes('Is this printed true to size?')) + 1;
  hold(name, 'has a ruler', sheet > 0);
  read('pdftoppm', '-gray', '-r', String(DOTS), '-f', String(sheet), '-l', String(sheet), '-singlefile', pdf, join(work, 'ruler'));
  const long = lines(readFileSync(join(work, 'ruler.pgm')));
  hold(name, `a ruler of 100 mm; lines of ${long}`, long.some(run => Math.abs(run - 1000) <= 4));
  hold(name, `a ruler of 4 in; lines of ${long}`, long.some(run => Math.abs(run - 1016) <= 4));
  console.log(`${name}: ${pages} sheets, ${Math.round(statSync(pdf).size / 1024)} KiB`);
}
rmSync(work, { recursive: true });
console.log(`Poppler: ${process.argv.length - 2} plans, ${failed} failures`);
process.exit(failed ? 1 : 0);

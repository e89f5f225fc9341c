// Holds the published schema against every plan with a validator that is not ours, and against plans that are
// broken on purpose. Usage: node validate_plans.mjs SCHEMA PLAN_OR_FOLDER…
//
// The first line of a broken plan says what it must report and whether a schema can see it:
//   // expect: field.unknown 7, length.comma 9; schema refuses     (or: schema accepts)
import Ajv from 'ajv';
import { parse } from 'jsonc-parser';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const [schemaFile, ...places] = process.argv.slice(2);
const schema = JSON.parse(readFileSync(schemaFile, 'utf8'));
const validate = new Ajv({ allErrors: true, strict: true, strictRequired: false, strictTypes: false }).compile(schema);

function plansIn(place) {
  if (!statSync(place).isDirectory()) return [place];
  return readdirSync(place).filter(name => name.endsWith('.json') && !name.endsWith('.schema.json')).sort()
    .map(name => join(place, name));
}

let faults = 0;
let good = 0;
let broken = 0;
for (const file of places.flatMap(plansIn)) {
  const text = readFileSync(file, 'utf8');
  const spelling = [];
  const plan = parse(text, spelling, { allowTrailingComma: false });
  const accepted = spelling.length === 0 && validate(plan);
  const wanted = text.match(/^\/\/ expect: .*; schema (accepts|refuses)\n/)?.[1] ?? 'accepts';
  text.startsWith('// expect:') ? broken++ : good++;
  if (accepted === (wanted === 'accepts')) continue;
  faults++;
  console.error(`${file}: the schema should ${wanted.slice(0, -1)} it`);
  for (const { error, offset } of spelling) console.error(`  spelling error ${error} at ${offset}`);
  for (const { instancePath, message } of validate.errors ?? []) console.error(`  ${instancePath || '/'} ${message}`);
}
console.log(`${good} plans and ${broken} broken plans held against the schema, ${faults} faults`);
if (good === 0) console.error('no plan was found');
process.exit(faults === 0 && good > 0 ? 0 : 1);

// Holds what `berthwright VERB --json` prints against its published schema with a validator that is not ours:
// for good plans the figures and findings, or the places of heaters, for broken ones the faults.
// VERB may have flags behind it, in one word; the plan stands where it has an @, else behind all of it.
// Usage: node validate_answers.mjs PROGRAM VERB SCHEMA PLAN_OR_FOLDER…
import Ajv from 'ajv';
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const [program, verb, schemaFile, ...places] = process.argv.slice(2);
const schema = JSON.parse(readFileSync(schemaFile, 'utf8'));
const validate = new Ajv({ allErrors: true, strict: true, strictTypes: false }).compile(schema);

function plansIn(place) {
  if (!statSync(place).isDirectory()) return [place];
  return readdirSync(place).filter(name => name.endsWith('.json') && !name.endsWith('.schema.json')).sort()
    .map(name => join(place, name));
}

// Every object of an answer, so that each can be spoiled; of the corners of one ring the first.
function* objectsIn(value) {
  if (value === null || typeof value !== 'object') return;
  if (!Array.isArray(value)) yield value;
  const ring = Array.isArray(value) && value.length > 0 && 'x_mm' in Object(value[0]);
  for (const part of ring ? value.slice(0, 1) : Object.values(value)) yield* objectsIn(part);
}

let faults = 0;
const fault = (file, ...words) => { faults++; console.error(`${file}: ${words.join(' ')}`); };
const count = { answers: 0, problems: 0, spoiled: 0, silent: 0 };
for (const file of places.flatMap(plansIn)) {
  const words = verb.split(' ');
  const asked = words.includes('@') ? words.map(word => (word === '@' ? file : word)) : [...words, file];
  const run = spawnSync(program, [...asked, '--json'], { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (run.stderr !== '') fault(file, 'something on standard error:', run.stderr);
  let told;
  try { told = JSON.parse(run.stdout); } catch (error) { fault(file, error.message); continue; }
  if (!validate(told))
    for (const { instancePath, message } of validate.errors) fault(file, instancePath || '/', message);
  const broken = run.status === 65;
  broken ? count.problems++ : count.answers++;
  const wanted = readFileSync(file, 'utf8').startsWith('// expect:');
  if (broken !== wanted || broken !== 'problems' in told) fault(file, 'ended with', run.status);
  if (broken) { if (told.problems.length === 0) fault(file, 'no problem told'); continue; }
  if (told.exit_code !== run.status) fault(file, 'says', told.exit_code, 'but ended with', run.status);
  if (verb === 'check' && told.findings.length === 0) fault(file, 'no finding');
  // A schema that takes everything would see nothing: it must refuse the answer once anything is added or lost.
  for (const object of objectsIn(told)) {
    count.spoiled++;
    object.surplus = 1;
    if (validate(told)) fault(file, 'the schema takes a surplus member in', JSON.stringify(object));
    delete object.surplus;
  }
  for (const object of objectsIn(told)) {
    const { sentence } = object;
    if (sentence === undefined) continue;
    count.silent++;
    delete object.sentence;
    if (validate(told)) fault(file, 'the schema takes an object without its sentence');
    object.sentence = sentence;
  }
}
console.log(`${count.answers} answers and ${count.problems} lists of problems held against the schema,`,
            `${count.spoiled} spoiled and ${count.silent} silent ones refused, ${faults} faults`);
// Not every verb answers in sentences.
const speaks = JSON.stringify(schema).includes('"sentence"');
process.exit(faults === 0 && count.answers > 0 && count.problems > 0 && (!speaks || count.silent > 0) ? 0 : 1);

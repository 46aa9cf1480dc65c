// node validate.mjs SCHEMA FILE...: says whether each file is valid; exit 1 if one is not.
// node validate.mjs SCHEMA --changes FILE: makes one wrong change at a time to the valid FILE and
// expects the schema to refuse each; exit 1 if one passes.
import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';

const [schemaFile, ...files] = process.argv.slice(2);
const read = (name) => JSON.parse(readFileSync(name, 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strict: true });
addFormats(ajv);
const validate = ajv.compile(read(schemaFile));

// Every leaf of the document, with a way to change it and the path to it.
function* places(value, path = []) {
  if (value !== null && typeof value === 'object') {
    for (const key of Object.keys(value)) {
      yield { holder: value, key, path: [...path, key].join('.') };
      yield* places(value[key], [...path, key]);
    }
  }
}

let failed = false;
if (files[0] === '--changes') {
  const document = read(files[1]);
  if (!validate(document)) throw new Error('the document is not valid to begin with');
  let tried = 0;
  for (const { holder, key, path } of places(document)) {
    // Stage templates have a format of their own; preferences are free.
    if (path.includes('.what.') || path.startsWith('preferences')) continue;
    const kept = holder[key];
    const wrongs = [null, typeof kept === 'string' ? 7 : 'wrong'];
    if (!Array.isArray(holder) && typeof kept !== 'object') wrongs.push({ unknown: 1 });
    for (const wrong of wrongs) {
      holder[key] = wrong;
      ++tried;
      if (validate(document)) {
        failed = true;
        console.error(`accepted although ${path} is ${JSON.stringify(wrong)}`);
      }
    }
    holder[key] = kept;
    if (!Array.isArray(holder)) {
      holder['not_a_key'] = 1;
      ++tried;
      if (validate(document) && !path.endsWith('.what')) {
        failed = true;
        console.error(`accepted an unknown key beside ${path}`);
      }
      delete holder['not_a_key'];
    }
  }
  console.log(`${tried} wrong changes tried`);
} else {
  for (const file of files) {
    if (validate(read(file))) {
      console.log(`valid: ${file}`);
    } else {
      failed = true;
      console.error(`not valid: ${file}`);
      for (const e of validate.errors.slice(0, 10)) console.error(`  ${e.instancePath} ${e.message}`);
    }
  }
}
process.exit(failed ? 1 : 0);

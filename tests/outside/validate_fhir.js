// R4 structure definitions of the npm package fhir, without network. usage: node validate_fhir.js FILE...
// Run where the package is installed. A line a file: its name and OK, or how many errors; exit 1 on any.
const { createRequire } = require('module');
const { Fhir } = createRequire(process.cwd() + '/')('fhir');
const fs = require('fs');

const fhir = new Fhir();
let bad = 0;
for (const file of process.argv.slice(2)) {
  const bundle = JSON.parse(fs.readFileSync(file));
  let errors = 0;
  for (const resource of [bundle, ...bundle.entry.map((entry) => entry.resource)]) {
    for (const message of fhir.validate(resource, { errorOnUnexpected: true }).messages) {
      if (/error|fatal/.test(message.severity)) {
        errors += 1;
        console.log(file, resource.resourceType, message.location, message.message);
      }
    }
  }
  console.log(file, errors ? `${errors} errors` : 'OK');
  bad += errors;
}
process.exit(bad ? 1 : 0);

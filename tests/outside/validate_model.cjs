// Asks the glTF validator of Khronos. In: where its package lies, a file. Out: how many errors and warnings, and the first of them.

const [, , where, name] = process.argv;
const validator = require(where);
const bytes = new Uint8Array(require("fs").readFileSync(name));
validator.validateBytes(bytes).then((report) => {
  const { numErrors, numWarnings, messages } = report.issues;
  console.log(`${numErrors} errors, ${numWarnings} warnings`);
  for (const message of messages.slice(0, 5)) if (message.severity < 2) console.log(`${message.code} ${message.message} ${message.pointer}`);
});

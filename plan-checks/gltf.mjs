// Holds glTF files against the validator of the Khronos Group: no errors, no warnings.
// node gltf.mjs FILE...
import { readFileSync } from 'node:fs';
import validator from 'gltf-validator';

let faults = 0;
for (const file of process.argv.slice(2)) {
  const { issues, info } = await validator.validateBytes(new Uint8Array(readFileSync(file)), { uri: file });
  for (const { severity, code, message, pointer } of issues.messages) {
    if (severity <= 1) {
      faults++;
      console.error(`${file}: ${code} at ${pointer}: ${message}`);
    }
  }
  if (!info.totalTriangleCount) {
    faults++;
    console.error(`${file}: no triangles`);
  }
}
console.log(`glTF validator: ${process.argv.length - 2} files, ${faults} faults`);
process.exit(faults === 0 ? 0 : 1);

// Documents held against the published schema of SARIF 2.1.0 (npm @microsoft/jest-sarif) by npm ajv. In: [document] as JSON on
// standard input. Out: [[fault]].
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Ajv from "ajv";

const load = createRequire(import.meta.url);
const ajv = new Ajv({ schemaId: "id", meta: false, allErrors: true });
ajv.addMetaSchema(load("ajv/lib/refs/json-schema-draft-04.json"));
const valid = ajv.compile(load("@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json"));

console.log(
    JSON.stringify(
        JSON.parse(readFileSync(0, "utf8")).map((document) =>
            valid(document) ? [] : valid.errors.map((fault) => `${fault.dataPath} ${fault.message}`),
        ),
    ),
);

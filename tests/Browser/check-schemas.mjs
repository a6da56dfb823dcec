// Values held against schemas of draft 2020-12 by npm ajv. In: { schemas: { name: schema }, cases: [{ schema, value }] } as
// JSON on standard input. Out: [whether it is taken].
import { readFileSync } from "node:fs";
import Ajv from "ajv-2020/dist/2020.js";

const { schemas, cases } = JSON.parse(readFileSync(0, "utf8"));
const ajv = new Ajv.default({ strict: true, strictRequired: false, allowUnionTypes: true });
const compiled = Object.fromEntries(Object.entries(schemas).map(([name, schema]) => [name, ajv.compile(schema)]));

console.log(JSON.stringify(cases.map(({ schema, value }) => compiled[schema](value))));

// Reads the files of scripts (name and text) from standard input and answers with what the linter says of each.
import { readFileSync } from 'node:fs';
import { Linter } from 'eslint';
import config from './eslint.config.mjs';

const linter = new Linter();
process.stdout.write(JSON.stringify(JSON.parse(readFileSync(0, 'utf8')).flatMap(({ name, text }) =>
  linter.verify(text, config, name).map(said => `${name}:${said.line} ${said.ruleId}: ${said.message}`))));

// SPDX-License-Identifier: GPL-3.0-or-later
// Holds exported statements against the public validator of xAPI 1.0.3. So that it is known to be
// able to say no, statements spoilt one way each must all be refused.
//   usage: node check.js EXPORT.json ...
'use strict';
const fs = require('fs');
const { statement: check } = require('@learninglocker/xapi-validation/dist/factory.js');

const faultsOf = (statement) => {
  try {
    return check(statement, ['statement']);
  } catch (error) {
    return [error];
  }
};

// Each spoils a good statement one way.
const spoil = {
  'no actor': (s) => delete s.actor,
  'no verb': (s) => delete s.verb,
  'no object': (s) => delete s.object,
  'two identifiers of the actor': (s) => (s.actor.mbox = 'mailto:a@example.org'),
  'an account without a name': (s) => delete s.actor.account.name,
  'a home page that is no address': (s) => (s.actor.account.homePage = 'people'),
  'a verb without a scheme': (s) => (s.verb.id = 'passed'),
  'a language that is none': (s) => (s.verb.display = { 'not a language': 'x' }),
  'an activity without a scheme': (s) => (s.object.id = 'exercise'),
  'an id that is no UUID': (s) => (s.id = '1234'),
  'local time': (s) => (s.timestamp = '2031-02-03T04:05:06'),
  'minus zero hours': (s) => (s.timestamp = '2031-02-03T04:05:06-00:00'),
  'a score as text': (s) => (s.result.score.scaled = '0.9'),
  'a score above one': (s) => (s.result.score.scaled = 1.5),
  'more points than there are': (s) => (s.result.score.raw = s.result.score.max + 1),
  'least above most': (s) => (s.result.score.min = s.result.score.max + 1),
  'a duration like a clock': (s) => (s.result.duration = '12:34'),
  'weeks beside days': (s) => (s.result.duration = 'P1W2D'),
  'success as text': (s) => (s.result.success = 'yes'),
  'a key nobody knows': (s) => (s.colour = 'red'),
  'a null': (s) => (s.result.response = null),
  'a registration that is no UUID': (s) => (s.context.registration = 'x'),
  'an extension without a scheme': (s) => (s.context.extensions = { mode: 'practice' }),
  'another version': (s) => (s.version = '2.0.0'),
};

let passed = 0;
let failed = 0;
const expect = (good, what) => {
  if (good) {
    passed += 1;
  } else {
    failed += 1;
    console.log(`FAILED: ${what}`);
  }
};

for (const file of process.argv.slice(2)) {
  const statements = JSON.parse(fs.readFileSync(file, 'utf8'));
  expect(Array.isArray(statements) && statements.length >= 2, `${file}: an array of statements`);
  for (const statement of statements) {
    const faults = faultsOf(statement);
    expect(faults.length === 0, `${file}: ${JSON.stringify(faults)}`);
  }
  const ids = new Set(statements.map((s) => s.id));
  expect(ids.size === statements.length, `${file}: an id for each statement`);
  const verdict = statements.find((s) => s.result && s.result.score);
  if (!verdict) continue;
  for (const [what, act] of Object.entries(spoil)) {
    const spoilt = JSON.parse(JSON.stringify(verdict));
    act(spoilt);
    expect(faultsOf(spoilt).length > 0, `the validator takes ${what}`);
  }
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > Object.keys(spoil).length ? 0 : 1);

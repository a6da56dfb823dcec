// Counts what a reading grade is made of: syllables with npm syllable, words and sentences with Intl.Segmenter, the grade with npm flesch-kincaid.
// In: {words: [word], texts: [[line]]} as JSON on standard input. Out: {syllables: [number], grades: [{words, sentences, syllables, grade}]}.
import { readFileSync } from "node:fs";
import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";

const [inWords, inSentences] = ["word", "sentence"].map((granularity) => new Intl.Segmenter("en", { granularity }));

const wordsOf = (text) => [...inWords.segment(text)].filter((part) => part.isWordLike).map((part) => part.segment);

function graded(lines) {
  const sentences = lines.flatMap((line) => [...inSentences.segment(line)].map((part) => wordsOf(part.segment)).filter((words) => words.length > 0));
  const words = sentences.flat();
  const counts = { sentence: sentences.length, word: words.length, syllable: words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0) };
  return { words: counts.word, sentences: counts.sentence, syllables: counts.syllable, grade: fleschKincaid(counts) };
}

const asked = JSON.parse(readFileSync(0, "utf8"));
console.log(JSON.stringify({ syllables: asked.words.map(syllable), grades: asked.texts.map(graded) }));

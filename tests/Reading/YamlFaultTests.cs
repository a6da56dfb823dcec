namespace Gradus.Tests.Reading;

public sealed class YamlFaultTests
{
    private const string Table = """
        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: &me Ansel Wherry
        clients/ansel/client.yaml:1:7 file-unreadable «&»
        '&me' gives this a name for use elsewhere.
        Take the name out; a text that begins with & needs quotation marks.

        clients/ansel/client.yaml
        - country: IE
        + country: *land
        clients/ansel/client.yaml:5:10 file-unreadable «*»
        '*land' stands for something written elsewhere.
        Write it out here; a text that begins with * needs quotation marks.

        clients/ansel/client.yaml
        - minutes: 35
        + minutes: !!int 35
        clients/ansel/client.yaml:10:10 file-unreadable «!»
        What begins with ! would change how this value is read.
        Take it out; a text that begins with ! needs quotation marks.

        clients/ansel/client.yaml
        - answers:
        + ---⏎answers:
        clients/ansel/client.yaml:14:1 file-unreadable «-»
        A second document begins here.
        Keep one document in a file: take out the line of three hyphens.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: Ansel: Wherry
        clients/ansel/client.yaml:1:12 file-unreadable «:»
        This cannot be read as keys and values.
        Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs quotation marks, a quotation mark that is not closed, or spaces that do not line up.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: “Ansel: Wherry”
        clients/ansel/client.yaml:1:13 file-unreadable «:»
        This cannot be read as keys and values.
        These quotation marks are those of a word processor, which count as letters here. Write straight ones, ".

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: "Ansel Wherry
        clients/ansel/client.yaml:1:7 file-unreadable «"»
        This cannot be read as keys and values.
        Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs quotation marks, a quotation mark that is not closed, or spaces that do not line up.

        clients/ansel/client.yaml
        - days: [Thu, Mon]
        + days: [Thu, Mon
        clients/ansel/client.yaml:8:7 file-unreadable «[»
        A bracket or brace opens here and nothing closes it.
        Put ] or } behind the last item.

        clients/ansel/client.yaml
        - agreed: { training: 2026-11-02, guardian: 2026-11-03 }
        + agreed: { training: 2026-11-02
        clients/ansel/client.yaml:12:9 file-unreadable «{»
        A bracket or brace opens here and nothing closes it.
        Put ] or } behind the last item.

        clients/ansel/client.yaml
        - minutes: 35
        + ⇥minutes: 35
        clients/ansel/client.yaml:10:1 file-unreadable «	»
        A tab stands here where only spaces can.
        Put spaces in its place.

        clients/ansel/client.yaml
        - minutes: 35
        +   minutes: 35
        clients/ansel/client.yaml:10:3 file-unreadable «m»
        This cannot be read as keys and values.
        Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs quotation marks, a quotation mark that is not closed, or spaces that do not line up.

        clients/ansel/client.yaml
        - minutes: 35
        + minutes:35
        clients/ansel/client.yaml:10:1 file-unreadable «m»
        This cannot be read as keys and values.
        Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs quotation marks, a quotation mark that is not closed, or spaces that do not line up.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + ? [a, b]⏎: c⏎name: Ansel Wherry
        clients/ansel/client.yaml:1:1 file-unreadable «?»
        A key is not a plain word here.
        Write the key as one word before the colon. A dose or a text in braces needs its braces taken out.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: "Ansel\0Wherry"
        clients/ansel/client.yaml:1:7 file-unreadable «"»
        A backslash in this text stands for a character that nobody can see.
        Take the backslash and what belongs to it out.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: "Ansel\UFFFFFFFF"
        clients/ansel/client.yaml file-unreadable
        A backslash in quotation marks stands before something that is no character.
        Take the backslash out, or write the character itself.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: @ansel
        clients/ansel/client.yaml:1:7 file-unreadable «@»
        This cannot be read as keys and values.
        Look at this line and the one above it: a space missing after a colon, a text with a colon in it that needs quotation marks, a quotation mark that is not closed, or spaces that do not line up.

        clients/ansel/client.yaml
        - name: Ansel Wherry
        + name: {Ansel}
        clients/ansel/client.yaml:1:7 value-wrong «{»
        'name' is a text, but here is a group of keys.
        Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.

        clients/ansel/client.yaml
        - answered: 2026-11-04
        + answered: 2026-11-04⏎answered: 2026-11-05
        clients/ansel/client.yaml:14:1 key-unknown «answered»
        'answered' appears twice.
        Keep one of the two.

        exercises/calf-brace.md
        - ---⏎title: Calf brace
        + title: Calf brace
        exercises/calf-brace.md:1:1 file-unreadable «t»
        The file does not begin with a header.
        Make the first line three hyphens, ---, with the keys below it and three hyphens after them.

        exercises/calf-brace.md
        - ---⏎## Do
        + ## Do
        exercises/calf-brace.md:1:1 file-unreadable «---»
        The header is never closed.
        Put a line of three hyphens, ---, after the last key.

        exercises/calf-sway.md
        - ---⏎title: Calf sway
        + ---⏎---⏎title: Calf sway
        exercises/calf-sway.md:2:1 file-unreadable «-»
        There are no keys here.
        Write the keys this file needs. 'gradus begin FOLDER' writes a practice in which each of them is explained.

        exercises/calf-sway.md
        - ---⏎title: Calf sway
        + -⏎title: Calf sway
        exercises/calf-sway.md:1:1 file-unreadable «-»
        The file does not begin with a header.
        Make the first line three hyphens, ---, with the keys below it and three hyphens after them.

        exercises/calf-sway.md
        - ---⏎title: Calf sway
        + ---⏎- a list⏎---⏎title: Calf sway
        exercises/calf-sway.md:2:1 value-wrong «-»
        Here should stand the keys of an exercise, but there is a list.
        Write each key on its own line, with a colon and its value.

        cautions/sharp-stab.md
        - End the exercise.
        +
        cautions/sharp-stab.md:5:1 key-missing at the end
        This caution does not say what to do.
        Write a sentence or two below the header.

        practice.md
        - These programmes are exercise advice. They do not replace advice from a doctor.
        +
        practice.md:20:1 key-missing at the end
        Nothing says what these programmes are, and are not.
        Write below the header that they do not replace advice from a doctor or a physiotherapist.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}

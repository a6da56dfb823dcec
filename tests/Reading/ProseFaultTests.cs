namespace Gradus.Tests.Reading;

public sealed class ProseFaultTests
{
    private const string Table = """
        exercises/calf-brace.md
        - Push for {press}.
        + Push to {reading: lying ankel dorsiflexion left}.
        exercises/calf-brace.md:11:19 id-unknown «lying ankel dorsiflexion»
        There is no motion 'lying ankel dorsiflexion' in this practice.
        Did you mean 'lying ankle dorsiflexion'?

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {reading: ankle dorsiflexion left}.
        exercises/calf-brace.md:11:19 value-wrong «ankle dorsiflexion»
        'ankle dorsiflexion' is measured in 3 ways that do not compare.
        Write which one: knee to wall, lunge ankle dorsiflexion, lying ankle dorsiflexion.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {demand: thoracic rotation}.
        exercises/calf-brace.md:11:9 value-wrong «{demand: thoracic rotation}»
        This does not say which side of thoracic rotation.
        Write left, right, or what the sport calls that side, behind the motion.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {demand: thoracolumbar flexion left}.
        exercises/calf-brace.md:11:9 value-wrong «{demand: thoracolumbar flexion left}»
        'thoracolumbar flexion' has no left and right.
        Take 'left' out.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {readings: thoracic rotation left}.
        exercises/calf-brace.md:11:9 brace-in-text «{readings: thoracic rotation left}»
        '{readings: thoracic rotation left}' is not filled in as it is written.
        Write {reading: hip extension left}: the motion, then left, right or what the sport calls that side.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {Reading: thoracic rotation left}.
        exercises/calf-brace.md:11:9 brace-in-text «{Reading: thoracic rotation left}»
        '{Reading: thoracic rotation left}' is not filled in as it is written.
        Write {reading: hip extension left}: the motion, then left, right or what the sport calls that side.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {reading:}.
        exercises/calf-brace.md:11:9 brace-in-text «{reading:}»
        '{reading:}' is not filled in as it is written.
        Write {reading: hip extension left}: the motion, then left, right or what the sport calls that side.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {reading: thoracic⏎rotation left}.
        exercises/calf-brace.md:11:9 brace-in-text «{»
        This brace stands alone, and a brace is never shown on a page.
        Write round brackets: in a text, braces hold only what Gradus fills in.
        exercises/calf-brace.md:12:14 brace-in-text «}»
        This brace stands alone, and a brace is never shown on a page.
        Write round brackets: in a text, braces hold only what Gradus fills in.

        exercises/calf-brace.md
        - Push for {press}.
        + Push to {reading: 30 deg left}.
        exercises/calf-brace.md:11:9 brace-in-text «{reading: 30 deg left}»
        '{reading: 30 deg left}' is not filled in as it is written.
        Write {reading: hip extension left}: the motion, then left, right or what the sport calls that side.

        cautions/sharp-stab.md
        - End the exercise.
        + End it at {reading: thoracic rotation left}.
        cautions/sharp-stab.md:5:11 brace-in-text «{reading: thoracic rotation left}»
        '{reading: thoracic rotation left}' stands for nothing here.
        Say it in a letter or in an exercise's own text: only there it is filled in for each client.

        exercises/calf-brace.md
        - Push for {press}.
        + Push <b>hard</b> for {press}.
        exercises/calf-brace.md:11:6 warning html-in-text «<b>»
        This is HTML; the page shows it as the text it is.
        Take it out; write *word* to stress something.
        exercises/calf-brace.md:11:13 warning html-in-text «</b>»
        This is HTML; the page shows it as the text it is.
        Take it out; write *word* to stress something.

        exercises/calf-brace.md
        - Push for {press}.
        + <div onclick="go()">⏎Push⏎</div>
        exercises/calf-brace.md:11:1 warning html-in-text «<»
        This is HTML; the page shows it as the text it is.
        Take it out; leave a line empty between paragraphs.

        exercises/calf-brace.md
        - Push for {press}.
        + Push <!-- note to me --> for {press}.
        exercises/calf-brace.md:11:6 warning html-in-text «<!-- note to me -->»
        This is HTML; the page shows it as the text it is.
        Take it out; write *word* to stress something.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](javascript:alert(1)) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to 'javascript:alert(1)'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](data:text/html,x) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to 'data:text/html,x'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](http://example.org/push) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to 'http://example.org/push'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](push.html) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to 'push.html'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](../clients/ansel/notes.md) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to '../clients/ansel/notes.md'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](//example.org/push) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to '//example.org/push'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](/etc/passwd) for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        A link cannot lead to '/etc/passwd'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push]() for {press}.
        exercises/calf-brace.md:11:1 address-refused «[»
        This link leads nowhere.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + [Push](heel-snik.md) for {press}.
        exercises/calf-brace.md:11:1 link-broken «[»
        This link leads to an exercise that there is not: 'heel-snik'.
        Did you mean 'heel-sink.md'?

        exercises/calf-brace.md
        - Push for {press}.
        + Push.⏎⏎1. First⏎2. See <javascript:alert(1)>.
        exercises/calf-brace.md:14:8 address-refused «<»
        A link cannot lead to 'javascript:alert(1)'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + > [Push][p]⏎⏎[p]: ftp://example.org "x"
        exercises/calf-brace.md:11:3 address-refused «[»
        A link cannot lead to 'ftp://example.org'.
        Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel.

        exercises/calf-brace.md
        - Push for {press}.
        + ![A bent ankle](ankle.jpg)
        exercises/calf-brace.md:11:1 picture-missing «![A bent ankle](ankle.jpg)»
        There is no picture 'exercises/ankle.jpg'.
        Put it there, or take it out of the text.

        clients/ansel/programme.md
        - Ansel, keep
        + <script>alert(1)</script>⏎⏎Ansel, keep
        clients/ansel/programme.md:33:1 warning html-in-text «<»
        This is HTML; the page shows it as the text it is.
        Take it out; leave a line empty between paragraphs.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}

namespace Gradus.Tests.Reading;

public sealed class PracticeCardFaultTests
{
    private const string Table = """
        practice.md
        -   breath: 8 s
        +   breath: 8
        practice.md:10:11 value-wrong «8»
        '8' is no time for 'breath'.
        Write a number and s or min, from 1 s to 15 min, as 10 s.

        practice.md
        -   breath: 8 s
        +   breath: 0 s
        practice.md:10:11 value-wrong «0 s»
        '0 s' is no time for 'breath'.
        Write a number and s or min, from 1 s to 15 min, as 10 s.

        practice.md
        -   breath: 8 s
        +   breath: 20 min
        practice.md:10:11 value-wrong «20 min»
        '20 min' is no time for 'breath'.
        Write a number and s or min, from 1 s to 15 min, as 10 s.

        practice.md
        -   carry: 2 m
        +   carry: fast
        practice.md:13:10 value-wrong «fast»
        'fast' is no speed for 'carry'.
        Write the metres walked in a second, from 1 m to 9 m.

        practice.md
        - lighter-share: 50 %
        + lighter-share: 0.5
        practice.md:18:18 value-wrong «0.5»
        '0.5' is no share for 'lighter-share'.
        Write a whole number from 1 to 100 and a per cent sign, as 60 %.

        practice.md
        - lighter-share: 50 %
        + lighter-share: 150 %
        practice.md:18:18 value-wrong «150 %»
        '150 %' is no share for 'lighter-share'.
        Write a whole number from 1 to 100 and a per cent sign, as 60 %.

        practice.md
        - lighter-share: 50 %
        + grow-at-most: 0 %
        practice.md:18:17 value-wrong «0 %»
        '0 %' is no share for 'grow-at-most'.
        Write a whole number from 1 to 100 and a per cent sign, as 60 %.

        practice.md
        - lighter-share: 50 %
        + grow-at-most: 400 %
        practice.md:18:17 value-wrong «400 %»
        '400 %' is no share for 'grow-at-most'.
        Write a whole number from 1 to 100 and a per cent sign, as 60 %.

        practice.md
        -   GB: { call: "999", unsure: "111" }
        +   Britain: { call: "999", unsure: "111" }
        practice.md:7:3 value-wrong «Britain»
        'Britain' is no country.
        Write the two capital letters of the country, as GB or IE.

        practice.md
        -   GB: { call: "999", unsure: "111" }
        +   GB: { call: “999”, unsure: "111" }
        practice.md:7:15 value-wrong «“999”»
        '“999”' is no telephone number.
        These quotation marks are those of a word processor, which count as letters here. Write straight ones, ".

        practice.md
        - contact: { email: hesper@example.org, phone: "+44 1632 960077" }
        + contact: hesper@example.org
        practice.md:4:10 value-wrong «h»
        Here should stand the keys of contact, but there is a text.
        Write each key on its own line, with a colon and its value.

        practice.md
        - email: hesper@example.org
        + email: hesper.example.org
        practice.md:4:19 value-wrong «hesper.example.org»
        'hesper.example.org' is no e-mail address.
        Write it as coach@example.org.

        practice.md
        - email: hesper@example.org
        + email: hesper@weir@example.org
        practice.md:4:19 value-wrong «hesper@weir@example.org»
        'hesper@weir@example.org' is no e-mail address.
        Write it as coach@example.org.

        practice.md
        - email: hesper@example.org
        + email: hesper quill@example.org
        practice.md:4:19 value-wrong «hesper quill@example.org»
        'hesper quill@example.org' is no e-mail address.
        Write it as coach@example.org.

        practice.md
        - email: hesper@example.org
        + email: hesper@
        practice.md:4:19 value-wrong «hesper@»
        'hesper@' is no e-mail address.
        Write it as coach@example.org.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "at the club"
        practice.md:4:46 value-wrong «"at the club"»
        'at the club' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "+44 1632 96000x"
        practice.md:4:46 value-wrong «"+44 1632 96000x"»
        '+44 1632 96000x' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "12"
        practice.md:4:46 value-wrong «"12"»
        '12' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "+44 1632 9600 7712 3456"
        practice.md:4:46 value-wrong «"+44 1632 9600 7712 3456"»
        '+44 1632 9600 7712 3456' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "++44 1632 960077"
        practice.md:4:46 value-wrong «"++44 1632 960077"»
        '++44 1632 960077' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - phone: "+44 1632 960077"
        + phone: "٠١٦٣٢ ٩٦٠٠٧٧"
        practice.md:4:46 value-wrong «"٠١٦٣٢ ٩٦٠٠٧٧"»
        '٠١٦٣٢ ٩٦٠٠٧٧' is no telephone number.
        Write 3 to 15 digits with + in front of the country, as "+44 1632 960001"; only spaces, hyphens and round brackets may stand between them.

        practice.md
        - language: en
        + language: english
        practice.md:5:11 value-wrong «english»
        'english' is no language.
        Write the two small letters of the language that the texts are written in, as en or de.

        practice.md
        - language: en
        + language: EN
        practice.md:5:11 value-wrong «EN»
        'EN' is no language.
        Write the two small letters of the language that the texts are written in, as en or de.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}

namespace Gradus.Tests.Benchmarks;

/// <summary>What the made practice has once.</summary>
internal static class MadeCard
{
    public const string Practice = """
        ---
        name: Low Weir fencers' gym
        coach: Ottoline Marsh
        contact: { email: coach@example.org, phone: "+44 1632 960001" }
        language: en
        emergency:
          GB: { call: "999", unsure: "111" }
          IE: { call: "112", text: 999 works as well. }
        settings: { lighter-share: 60 % }
        ---
        These programmes are exercise advice for adults who fence and train with us. They do not replace the advice of a doctor or a physiotherapist.

        Local rules come first, and so does the work of people who hold a licence to treat you.

        """;

    public const string Sport = """
        name: Épée fencing
        stance: Which hand holds the weapon?
        roles:
          weapon arm: right
          free arm: left
          front leg: right
          rear leg: left
        demands:
          - position: lunge
            motion: lying ankle dorsiflexion
            side: rear leg
            mode: passive
            at-least: 15
            because: Without it the heel lifts early and the push behind the lunge is lost.

        """;
}

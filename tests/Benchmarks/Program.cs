using System.Globalization;
using Gradus.Tests.Benchmarks;

if (
    args is ["audit" or "publish" or "many" or "shared", var many]
    && int.TryParse(many, NumberStyles.None, CultureInfo.InvariantCulture, out var some)
    && some is > 0 and <= MadePractice.Most / 2
)
{
    switch (args[0])
    {
        case "audit":
            AuditParts.Run(Console.Out, some);
            return 0;
        case "shared":
            return SharedRuns.Run(Console.Out, some) ? 0 : 1;
        default:
            WholeRuns.Run(Console.Out, some, alone: args[0] == "many");
            return 0;
    }
}

if (
    args is ["write", var number, var folder]
    && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var asMany)
    && asMany is > 0 and <= MadePractice.Most
)
{
    MadePractice.Of(asMany).WriteTo(folder);
    return 0;
}

if (
    args is not ([] or [_] or [_, _])
    || !args.All(a =>
        int.TryParse(a, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number is > 0 and <= MadePractice.Most / 2
    )
)
{
    Console.Error.WriteLine(
        "benchmarks [CLIENTS [RUNS]], or benchmarks audit, publish, many or shared CLIENTS, or benchmarks write CLIENTS FOLDER: "
            + $"whole numbers, at most {MadePractice.Most / 2} clients."
    );
    return 2;
}

int[] asked = [.. args.Select(a => int.Parse(a, CultureInfo.InvariantCulture))];
var clients = asked is [var one, ..] ? one : 1000;
var runs =
    asked is [_, var times] ? times
    : clients <= 200 ? 3
    : 1;

// What is run for the first time is compiled first: that is not what is measured.
Run.Of(MadePractice.Of(20));
var once = Run.Median(clients, runs);
Table.Write(Console.Out, once);
var twice = Run.Median(2 * clients, runs);
Table.Write(Console.Out, twice);
return Table.WriteGrowth(Console.Out, once, twice) ? 0 : 1;

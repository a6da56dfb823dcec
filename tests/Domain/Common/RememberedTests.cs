using System.Runtime.CompilerServices;
using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class RememberedTests
{
    [Fact]
    public void An_answer_is_worked_out_once()
    {
        var (remembered, worked) = (new Remembered<string, string>(3, StringComparer.OrdinalIgnoreCase), 0);
        foreach (var asked in (string[])["a", "b", "A", "b"])
            Assert.Equal(asked.ToUpperInvariant(), remembered.Of(asked, a => Work(a)));
        Assert.Equal(2, worked);

        string Work(string asked)
        {
            worked++;
            return asked.ToUpperInvariant();
        }
    }

    [Fact]
    public void Of_too_many_all_are_forgotten_and_asked_for_again()
    {
        var worked = new List<int>();
        var remembered = new Remembered<int, int>(3);
        foreach (var asked in (int[])[1, 2, 3, 1, 4, 4, 1, 2])
            Assert.Equal(asked * 10, remembered.Of(asked, Work));
        Assert.Equal([1, 2, 3, 4, 1, 2], worked);

        int Work(int asked)
        {
            worked.Add(asked);
            return asked * 10;
        }
    }

    [Fact]
    public void Many_threads_get_the_same()
    {
        var remembered = new Remembered<int, object>(50);
        var answers = new object[1000];
        Parallel.For(0, answers.Length, at => answers[at] = remembered.Of(at % 40, _ => new object()));
        for (var at = 0; at < answers.Length; at++)
            Assert.Same(answers[at % 40], answers[at]);
    }

    /// <summary>What is remembered is held, and no more: of a hundred things nothing but the last few is there.</summary>
    [Fact]
    public void What_is_forgotten_is_let_go()
    {
        var remembered = new Remembered<int, byte[]>(10);
        var weak = Enumerable.Range(0, 100).Select(at => Held(remembered, at)).ToArray();
        GC.Collect();
        Assert.InRange(weak.Count(w => w.IsAlive), 1, 11);
        GC.KeepAlive(remembered);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WeakReference Held(Remembered<int, byte[]> remembered, int at) => new(remembered.Of(at, _ => new byte[100]));
}

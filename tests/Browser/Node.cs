using System.Diagnostics;
using System.Text.Json;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>A script of this folder, run by node: what it is asked goes in and what it answers comes out as JSON.</summary>
internal static class Node
{
    public static async Task<TAnswer> Ask<TAsked, TAnswer>(string script, TAsked asked)
    {
        var start = new ProcessStartInfo("node", script)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Repository.Path("tests", "Browser"),
        };
        using var asking = Process.Start(start) ?? throw new InvalidOperationException("node did not start");
        var stop = TestContext.Current.CancellationToken;
        var (said, trouble) = (asking.StandardOutput.ReadToEndAsync(stop), asking.StandardError.ReadToEndAsync(stop));
        await asking.StandardInput.WriteAsync(JsonSerializer.Serialize(asked, JsonSerializerOptions.Web).AsMemory(), stop);
        asking.StandardInput.Close();
        await asking.WaitForExitAsync(stop);
        Assert.Equal("", await trouble);
        return JsonSerializer.Deserialize<TAnswer>(await said, JsonSerializerOptions.Web)
            ?? throw new InvalidOperationException("node said nothing");
    }
}

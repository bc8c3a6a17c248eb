using System.Runtime.CompilerServices;
using System.Xml.Linq;

namespace Proveout.Publish.Tests;

/// <summary>Compares a document, an element a line, with the one kept beside the tests. A change that is meant is taken over by copying the received file.</summary>
internal static class Snapshot
{
    public static void Match(string name, XElement document, [CallerFilePath] string test = "")
    {
        var received = $"{document}\n";
        var approved = Path.Combine(Path.GetDirectoryName(test)!, name);
        if (File.Exists(approved) && File.ReadAllText(approved) == received)
            return;
        var place = Path.Combine(Directory.CreateTempSubdirectory("proveout-received-").FullName, name);
        File.WriteAllText(place, received);
        Assert.Fail($"Differs from {approved}. Received: {place}");
    }
}

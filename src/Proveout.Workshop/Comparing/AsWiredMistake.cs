using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>One mistake of a file that says how a machine was built otherwise than designed.</summary>
/// <param name="Kind">The kind; samples/README.md lists them.</param>
/// <param name="Names">What it names, by key.</param>
/// <param name="Place">Where it stands.</param>
internal sealed record AsWiredMistake(string Kind, IReadOnlyDictionary<string, string[]> Names, SourcePlace Place)
{
    /// <summary>What stands at a key; nothing when the key is not there.</summary>
    public string[] At(string key) => Names.GetValueOrDefault(key, []);

    /// <summary>The terminals at a key.</summary>
    public TerminalReference[] TerminalsAt(string key) => [.. At(key).Select(TerminalReference.TryParse).OfType<TerminalReference>()];
}

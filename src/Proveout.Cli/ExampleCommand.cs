using System.CommandLine;

namespace Proveout.Cli;

/// <summary>A command whose help ends with an example.</summary>
/// <param name="name">Its name.</param>
/// <param name="description">What it does, in a sentence.</param>
/// <param name="examples">Lines as a person would type them.</param>
internal sealed class ExampleCommand(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Lines as a person would type them.</summary>
    public IReadOnlyList<string> Examples { get; } = examples;

    /// <summary>True when it ends by itself after a signal, with the exit code that it chooses.</summary>
    public bool MindsSignals { get; set; }
}

namespace Proveout.Cli;

/// <summary>The drawings that were written.</summary>
internal sealed record DrawingsShape(string Format, string Machine, IReadOnlyList<string> Files);

using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Proveout.Cli;

/// <summary>The usual help, and examples after it.</summary>
/// <param name="usual">Writes the usual help.</param>
internal sealed class ExampleHelp(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly string[] OfRoot = ["proveout", "proveout review samples/alderbrook", "proveout bench samples/pennywort --serial P-7 --builder \"Mara Lindt\""];

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Example:");
        foreach (var example in (parseResult.CommandResult.Command as ExampleCommand)?.Examples ?? OfRoot)
            output.WriteLine($"  {example}");
        return ExitCode.Fine;
    }
}

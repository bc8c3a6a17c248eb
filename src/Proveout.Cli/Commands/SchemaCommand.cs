using System.CommandLine;
using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary><c>proveout schema</c>.</summary>
internal static class SchemaCommand
{
    public static Command Build(Terminal terminal)
    {
        var command = new ExampleCommand("schema", "Write the JSON Schema of machine and catalogue files, for editors.", "proveout schema > machine-file.schema.json");
        command.SetAction(_ => terminal.Output.Write(MachineSchema.Write()));
        return command;
    }
}

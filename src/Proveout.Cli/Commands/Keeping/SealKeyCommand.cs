using System.CommandLine;
using System.Text;
using Proveout.Journal;

namespace Proveout.Cli;

/// <summary><c>proveout seal-key FILE</c>.</summary>
internal static class SealKeyCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var target = new Argument<string>("FILE") { Description = "The private key; nothing may be there. The public key goes beside it, with .pub behind the name." };
        var command = new ExampleCommand("seal-key", "Make a key that records are sealed with. Keep the private half to yourself and give the public half away.", "proveout seal-key workshop.key")
        {
            target, options.Json,
        };
        command.SetAction(parse =>
        {
            var asJson = parse.GetValue(options.Json);
            var file = parse.GetValue(target)!;
            using var key = SealKey.Make();
            try
            {
                WritePrivate(file, key.ToPem());
                File.WriteAllText(file + ".pub", key.ToPublicPem());
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
            {
                return terminal.Refuse("unwritable-file", file, "The key cannot be written, or there is a file already.", "Give a path where nothing is yet, in a folder that you may write.", asJson);
            }
            if (asJson)
                terminal.Show(new KeyShape("proveout-key 1", file, file + ".pub", key.PublicKey), JsonShapes.Spread.KeyShape);
            else
                terminal.Say($"{file}: whoever has it can seal in your name. {file}.pub: give it to those who check your records.");
            return ExitCode.Fine;
        });
        return command;
    }

    // Nobody else may read it, from the first moment on.
    private static void WritePrivate(string file, string pem)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var stream = new FileStream(file, options);
        stream.Write(Encoding.ASCII.GetBytes(pem));
        stream.Flush(flushToDisk: true);
    }
}

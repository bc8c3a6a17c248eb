using System.Text;
using System.Text.Json.Serialization.Metadata;
using Spectre.Console;

namespace Proveout.Cli;

/// <summary>Where a command reads and shows. Redirected output is plain text without colour or wrapping.</summary>
/// <param name="output">What was asked for.</param>
/// <param name="error">Complaints and progress.</param>
/// <param name="input">What a person types.</param>
/// <param name="isPlain">True when the output is no screen.</param>
/// <param name="isTyped">True when the input is a keyboard.</param>
internal sealed class Terminal(TextWriter output, TextWriter error, TextReader input, bool isPlain, bool isTyped)
{
    private IAnsiConsole? _screen;

    public TextWriter Output => output;

    public TextWriter Error => error;

    /// <summary>True when a person types at a keyboard.</summary>
    public bool IsTyped => isTyped;

    private IAnsiConsole Screen => _screen ??= AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output) });

    public static Terminal OfProcess() => new(
        Console.Out,
        Console.Error,
        Console.In,
        Console.IsOutputRedirected || Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 },
        !Console.IsInputRedirected);

    /// <summary>Shows a line.</summary>
    public void Say(string line = "") => output.WriteLine(ShownText.Of(line));

    /// <summary>Shows a line, with its meaning in colour where there is a screen.</summary>
    public void Say(string line, Meaning meaning)
    {
        if (isPlain || meaning == Meaning.Plain)
            Say(line);
        else
            Screen.WriteLine(ShownText.Of(line), StyleOf(meaning));
    }

    /// <summary>Shows what can hurt, a line each, in a form that no other line has.</summary>
    public void Warn(params IEnumerable<string> cautions)
    {
        foreach (var caution in cautions)
            Say($"CAUTION: {caution}", Meaning.Caution);
    }

    /// <summary>Shows a table.</summary>
    public void Show(Sheet sheet)
    {
        if (isPlain)
            sheet.WritePlain(output);
        else
            Screen.Write(sheet.OnScreen());
    }

    /// <summary>Shows data in its documented shape.</summary>
    public void Show<T>(T data, JsonTypeInfo<T> shape) => output.WriteLine(JsonText.Of(data, shape));

    /// <summary>Says on the error stream what is wrong.</summary>
    public void Complain(string sentence) => error.WriteLine(ShownText.Of(sentence));

    /// <summary>Asks for a line; null at the end of the input.</summary>
    public async Task<string?> AskAsync(string prompt, CancellationToken cancellation)
    {
        if (isTyped)
            await output.WriteAsync(prompt.AsMemory(), cancellation);
        // A console read cannot be cancelled, but waiting for it can.
        return await Task.Run(input.ReadLine, cancellation).WaitAsync(cancellation);
    }

    /// <summary>Asks for something that is not to be seen while it is typed; null at the end of the input.</summary>
    public async Task<string?> AskSecretAsync(string prompt, CancellationToken cancellation)
    {
        if (!isTyped)
            return await AskAsync(prompt, cancellation);
        await output.WriteAsync(prompt.AsMemory(), cancellation);
        var typed = await Task.Run(ReadUnseen, cancellation).WaitAsync(cancellation);
        Say();
        return typed;
    }

    private static string ReadUnseen()
    {
        var typed = new StringBuilder();
        while (Console.ReadKey(intercept: true) is { Key: not ConsoleKey.Enter } key)
            if (key.Key == ConsoleKey.Backspace)
                typed.Length = Math.Max(0, typed.Length - 1);
            else if (!char.IsControl(key.KeyChar))
                typed.Append(key.KeyChar);
        return typed.ToString();
    }

    private static Style StyleOf(Meaning meaning) => meaning switch
    {
        Meaning.Good => new Style(Color.Green),
        Meaning.Bad => new Style(Color.Red, decoration: Decoration.Bold),
        Meaning.Caution => new Style(Color.Black, Color.Yellow),
        _ => Style.Plain,
    };
}

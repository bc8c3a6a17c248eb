using System.Diagnostics;

namespace Proveout.Journal.Trials;

/// <summary>A second, real process that works on a journal.</summary>
public sealed class WriterProcess : IDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Proveout.Journal.Tests.Writer.dll");
    private readonly Process _process;

    private WriterProcess(ProcessStartInfo start) => _process = Process.Start(start)!;

    public static WriterProcess Append(string path, Guid build, string person, int count) =>
        new(Start(["dotnet", Program, "append", path, $"{build}", person, $"{count}"]));

    /// <summary>Many benches at once, over all builds of the journal in turn; each entry is sent twice.</summary>
    public static WriterProcess AtBenches(string place, string person, int benches, int entries) =>
        new(Start(["dotnet", Program, "benches", place, person, $"{benches}", $"{entries}"]));

    /// <summary>Records a whole life of a journal on a disk that keeps a log of every write and sync.</summary>
    public static WriterProcess Record(string path, string log, int sessions, int entries) =>
        new(Start(["dotnet", Program, "record", path, log, $"{sessions}", $"{entries}"]));

    /// <summary>Appends to a journal on a disk that is full after so many bytes, and once more when it is no longer.</summary>
    public static WriterProcess Fill(string path, long bytes) => new(Start(["dotnet", Program, "fill", path, $"{bytes}"]));

    /// <summary>Runs the command words of <paramref name="before"/> in front, for example to take on another user.</summary>
    public static WriterProcess Open(string path, params string[] before) =>
        new(Start([.. before, "dotnet", Program, "open", path]));

    public async Task<string?> ReadLineAsync() => await _process.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(30));

    /// <summary>All that is still to come, until the process has ended.</summary>
    public async Task<IReadOnlyList<string>> ReadToEndAsync()
    {
        var rest = await _process.StandardOutput.ReadToEndAsync().WaitAsync(TimeSpan.FromSeconds(120));
        await _process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(30));
        // What stands after the last line end was cut off by the kill, and was not acknowledged.
        return rest.Split('\n')[..^1];
    }

    public int ExitCode => _process.ExitCode;

    /// <summary>SIGKILL on Unix: the process gets no chance to tidy up.</summary>
    public void Kill() => _process.Kill();

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill();
        _process.Dispose();
    }

    private static ProcessStartInfo Start(IReadOnlyList<string> command) =>
        new(command[0], command.Skip(1)) { RedirectStandardOutput = true, UseShellExecute = false };
}

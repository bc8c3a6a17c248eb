using System.Diagnostics;

namespace Proveout.Cli.Tests;

/// <summary>The program as a process of its own.</summary>
public sealed class ProgramProcess : IDisposable
{
    private readonly Process _process;

    private ProgramProcess(Process process) => _process = process;

    public StreamReader Output => _process.StandardOutput;

    public StreamReader Error => _process.StandardError;

    public static string Assembly { get; } = Path.Combine(AppContext.BaseDirectory, "proveout.dll");

    public static ProgramProcess Start(params string[] words) => StartWith(null, words);

    /// <summary>Starts it for somebody whose own data lie in a folder.</summary>
    public static ProgramProcess StartWith(string? dataFolder, params string[] words)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        foreach (var word in words.Prepend(Assembly))
            start.ArgumentList.Add(word);
        if (dataFolder is not null)
            start.Environment["XDG_DATA_HOME"] = dataFolder;
        return new ProgramProcess(Process.Start(start)!);
    }

    /// <summary>Presses Ctrl-C.</summary>
    public void Interrupt() => Signal("-INT");

    /// <summary>Stops it as a service is stopped.</summary>
    public void Terminate() => Signal("-TERM");

    private void Signal(string signal)
    {
        using var kill = Process.Start("kill", [signal, _process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    public async Task<int> ExitAsync()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill();
        _process.Dispose();
    }
}

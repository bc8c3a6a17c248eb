using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Npgsql;

namespace Proveout.Journal.Trials.Servers;

/// <summary>A PostgreSQL server of one's own: in a temporary folder, reached by a socket in it alone, gone with everything in it afterwards.</summary>
public sealed class PostgresServer : IDisposable
{
    private const string Root = "root", Nobody = "65534";
    private readonly string _programs;
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-pg-");
    private readonly ConcurrentBag<string> _spare = [];
    private int _databases;

    private PostgresServer(string programs)
    {
        _programs = programs;
        AppDomain.CurrentDomain.ProcessExit += EndWithProcess;
        // PostgreSQL does not run as root.
        if (Environment.UserName == Root)
            Run("chown", $"{Nobody}:{Nobody}", _folder.FullName);
        RunAsOwner("initdb", "--pgdata", Data, "--username", "workshop", "--auth", "scram-sha-256", "--pwfile", PasswordFile(), "--encoding", "UTF8", "--no-locale", "--no-sync", "--data-checksums");
        Start();
    }

    /// <summary>What the server asks for; tests give it in the environment.</summary>
    public const string Password = "horse staple";

    /// <summary>Where the socket is.</summary>
    public string Folder => _folder.FullName;

    private string Data => Path.Combine(Folder, "data");

    /// <summary>Where PostgreSQL's programs are, by the environment (<c>PROVEOUT_POSTGRES</c>) or where Debian puts them; null when it is not installed.</summary>
    public static string? Programs() =>
        Environment.GetEnvironmentVariable("PROVEOUT_POSTGRES") is { Length: > 0 } given ? given
        : Directory.Exists("/usr/lib/postgresql")
            ? Directory.EnumerateDirectories("/usr/lib/postgresql").OrderByDescending(folder => int.TryParse(Path.GetFileName(folder), CultureInfo.InvariantCulture, out var version) ? version : 0)
                .Select(folder => Path.Combine(folder, "bin")).FirstOrDefault(folder => File.Exists(Path.Combine(folder, "initdb")))
            : null;

    /// <summary>Makes one and starts it; null when PostgreSQL is not installed. The password stands in the environment of this process from then on.</summary>
    public static PostgresServer? Begin()
    {
        if (Programs() is not { } programs)
            return null;
        Environment.SetEnvironmentVariable("PGPASSWORD", Password);
        return new PostgresServer(programs);
    }

    /// <summary>An empty database.</summary>
    /// <param name="how">What follows CREATE DATABASE and the name.</param>
    public string NewDatabase(string how = "")
    {
        if (how.Length == 0 && _spare.TryTake(out var spare))
            return spare;
        var name = string.Create(CultureInfo.InvariantCulture, $"journal{Interlocked.Increment(ref _databases)}");
        Execute("postgres", $"CREATE DATABASE {name} {how}");
        return AddressOf(name);
    }

    /// <summary>Empties a database for the next who asks: to make one takes the disk much longer.</summary>
    public void GiveBack(string address)
    {
        Execute(NameIn(address), "DROP SCHEMA IF EXISTS proveout CASCADE; DROP SCHEMA IF EXISTS proveout_servers CASCADE");
        _spare.Add(address);
    }

    /// <summary>The name of the database in an address that this server gave.</summary>
    public static string NameIn(string address) => address.Split('/', '?')[3];

    /// <summary>The address of a database, as people give it; another folder when something stands between.</summary>
    public string AddressOf(string database, string? folder = null) => $"postgresql://workshop@/{database}?host={Uri.EscapeDataString(folder ?? Folder)}";

    /// <summary>Does what somebody with a database tool could do.</summary>
    public void Execute(string database, string sql)
    {
        using var connection = Connect(database);
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }

    /// <summary>The one value that a question gives.</summary>
    public T Read<T>(string database, string sql)
    {
        using var connection = Connect(database);
        using var command = new NpgsqlCommand(sql, connection);
        return (T)command.ExecuteScalar()!;
    }

    /// <summary>A connection of one's own.</summary>
    public NpgsqlConnection Connect(string database)
    {
        var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder
        {
            Host = Folder,
            Username = "workshop",
            Database = database,
            Pooling = false,
        }.ToString());
        connection.Open();
        return connection;
    }

    public void Start() => RunAsOwner(
        "pg_ctl", "start", "--wait", "--silent", "--pgdata", Data, "--log", Path.Combine(Folder, "log"),
        "--options", $"-k {Folder} -c listen_addresses='' -c max_connections=120");

    /// <summary>Stops at once without tidying up, as when the process is killed: what was committed comes back from the write-ahead log.</summary>
    public void Crash() => RunAsOwner("pg_ctl", "stop", "--mode", "immediate", "--silent", "--pgdata", Data);

    public void Stop() => RunAsOwner("pg_ctl", "stop", "--mode", "fast", "--silent", "--pgdata", Data);

    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= EndWithProcess;
        // Everything is thrown away, so that nothing needs to be brought to the disk first.
        if (File.Exists(Path.Combine(Data, "postmaster.pid")))
            Crash();
        _folder.Delete(recursive: true);
    }

    private void EndWithProcess(object? sender, EventArgs e) => Dispose();

    private string PasswordFile()
    {
        var file = Path.Combine(Folder, "password");
        File.WriteAllText(file, Password + "\n");
        return file;
    }

    private void RunAsOwner(string program, params string[] words)
    {
        string[] command = [Path.Combine(_programs, program), .. words];
        if (Environment.UserName == Root)
            command = ["setpriv", $"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups", .. command];
        Run(command);
    }

    private static void Run(params string[] command)
    {
        var start = new ProcessStartInfo(command[0], command[1..]) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = "/" };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{string.Join(' ', command)} ended with {process.ExitCode}: {error} {output.Result}");
    }
}

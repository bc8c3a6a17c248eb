using Npgsql;

namespace Proveout.Journal.Postgres;

/// <summary>The address of a database as libpq defines it (PostgreSQL documentation, "Connection URIs"), without a password.</summary>
internal static class PostgresAddress
{
    private const int UsualPort = 5432;
    private const string UsualSocketFolder = "/var/run/postgresql";
    private const string Form = "Give it as postgresql://USER@SERVER:PORT/DATABASE.";
    private static readonly string[] Schemes = ["postgresql://", "postgres://"];

    /// <summary>What may stand behind the question mark, by the names of libpq, and what sets it here.</summary>
    private static readonly Dictionary<string, Action<NpgsqlConnectionStringBuilder, string>> Parameters = new(StringComparer.Ordinal)
    {
        ["host"] = (address, value) => address.Host = value,
        ["port"] = (address, value) => address.Port = PortOf(value),
        ["dbname"] = (address, value) => address.Database = value,
        ["user"] = (address, value) => address.Username = value,
        ["passfile"] = (address, value) => address.Passfile = value,
        ["sslmode"] = (address, value) => address.SslMode = SslModeOf(value),
        ["sslrootcert"] = (address, value) => address.RootCertificate = value,
        ["sslcert"] = (address, value) => address.SslCertificate = value,
        ["sslkey"] = (address, value) => address.SslKey = value,
        ["connect_timeout"] = (address, value) => address.Timeout = SecondsOf(value),
    };

    public static bool IsOne(string text) => SchemeOf(text) is not null;

    /// <summary>How the database is named to people: where it is and nothing that lets anybody in.</summary>
    public static string NameOf(NpgsqlConnectionStringBuilder address) =>
        FormattableString.Invariant($"postgresql://{(IsSocket(address.Host!) ? "" : $"{address.Host}:{address.Port}")}/{address.Database}");

    /// <exception cref="JournalUnavailableException">The address is not one, or carries a password.</exception>
    public static NpgsqlConnectionStringBuilder Read(string text)
    {
        var rest = text[(SchemeOf(text) ?? throw Refusal($"This is not an address of a database. {Form}")).Length..];
        var (path, query) = Cut(rest, '?');
        var (authority, database) = Cut(path, '/');
        var at = authority.LastIndexOf('@');
        var address = new NpgsqlConnectionStringBuilder { Port = UsualPort };
        if (at >= 0)
            ReadUser(address, authority[..at]);
        ReadServer(address, authority[(at + 1)..]);
        if (database.Length > 0)
            address.Database = Decode(database);
        foreach (var pair in query.Split('&', StringSplitOptions.RemoveEmptyEntries))
            Set(address, pair);
        address.Host ??= Directory.Exists(UsualSocketFolder) ? UsualSocketFolder : "localhost";
        return address.Database is { Length: > 0 } ? address : throw Refusal($"The address names no database. {Form}");
    }

    private static void ReadUser(NpgsqlConnectionStringBuilder address, string user)
    {
        // A command line is seen by everybody on the computer, and stays in the history of the shell.
        if (user.Contains(':'))
            throw PasswordRefusal();
        if (user.Length > 0)
            address.Username = Decode(user);
    }

    private static void ReadServer(NpgsqlConnectionStringBuilder address, string server)
    {
        if (server.Contains(','))
            throw Refusal($"The address names several servers; the journal is kept on one. {Form}");
        var end = server.StartsWith('[') ? server.IndexOf(']') + 1 : server.IndexOf(':');
        var host = end < 0 ? server : server[..end];
        var port = end < 0 || end >= server.Length ? "" : server[end..];
        if (host.Length > 0)
            address.Host = Decode(host.Trim('[', ']'));
        if (port.Length > 0)
            address.Port = PortOf(port[0] == ':' ? port[1..] : port);
    }

    private static void Set(NpgsqlConnectionStringBuilder address, string pair)
    {
        var (name, value) = Cut(pair, '=');
        if (name == "password")
            throw PasswordRefusal();
        if (!Parameters.TryGetValue(name, out var set))
            throw Refusal($"The address has a parameter that is not known here. These are: {string.Join(", ", Parameters.Keys)}.");
        set(address, Decode(value));
    }

    private static bool IsSocket(string host) => host.StartsWith('/');

    private static string? SchemeOf(string text) => Schemes.FirstOrDefault(scheme => text.StartsWith(scheme, StringComparison.OrdinalIgnoreCase));

    private static (string Before, string After) Cut(string text, char mark) =>
        text.IndexOf(mark) is var at and >= 0 ? (text[..at], text[(at + 1)..]) : (text, "");

    private static string Decode(string text) => Uri.UnescapeDataString(text);

    private static int PortOf(string text) =>
        ushort.TryParse(text, out var port) && port > 0 ? port : throw Refusal($"The port in the address is not a number from 1 to 65535. {Form}");

    private static int SecondsOf(string text) =>
        ushort.TryParse(text, out var seconds) ? seconds : throw Refusal("The connect_timeout in the address is not a number of whole seconds.");

    private static SslMode SslModeOf(string text) => text switch
    {
        "disable" => SslMode.Disable,
        "allow" => SslMode.Allow,
        "prefer" => SslMode.Prefer,
        "require" => SslMode.Require,
        "verify-ca" => SslMode.VerifyCA,
        "verify-full" => SslMode.VerifyFull,
        _ => throw Refusal("The sslmode in the address is none of disable, allow, prefer, require, verify-ca, verify-full."),
    };

    private static JournalUnavailableException PasswordRefusal() => Refusal(
        "The address holds a password, which others can see on this computer. Leave it out of the address: give it in the environment as PGPASSWORD, "
        + "or in the password file that PGPASSFILE names (.pgpass in your own folder when it names none).");

    // The text itself is never repeated: it may hold a password in a place where none is sought.
    private static JournalUnavailableException Refusal(string sentence) => new(sentence, null);
}

using Microsoft.Data.Sqlite;

namespace Proveout.Journal.Sqlite;

/// <summary>The one place where errors of the driver and of the file system become sentences. Codes: sqlite.org/rescode.html.</summary>
internal static class SqliteErrors
{
    private const int Statement = 1, Permission = 3, Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13, CannotOpen = 14;
    private const int NotADatabase = 26;

    public static T Translate<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException cause)
        {
            throw Of(path, cause);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw Unwritable(path, cause);
        }
    }

    public static JournalException Of(string path, SqliteException cause) => cause.SqliteErrorCode switch
    {
        Permission or ReadOnly or CannotOpen => Unwritable(path, cause),
        Busy or Locked => new JournalUnavailableException(
            $"The journal {path} is held by another program. Nothing was recorded; close that program or wait, then try again.", cause),
        Full => new JournalUnavailableException(
            $"There is no space left for the journal {path}. Nothing was recorded; make space, then try again.", cause),
        InputOutput => new JournalUnavailableException(
            $"The disk with the journal {path} failed to read or write. Check the disk and the cable or share, then try again.", cause),
        NotADatabase => new JournalFormatException(
            $"{path} is not a journal. Give the path of a journal, or of a file that does not exist yet.", cause),
        // The statements are fixed: one that does not fit the tables means that the tables are not those that were made.
        Corrupt or Statement => new JournalDamagedException(
            $"The journal {path} is damaged. Keep it as it is, and go back to a copy that is whole, or save what can be read with `proveout rescue`.", cause),
        _ => new JournalUnavailableException(
            $"The journal {path} could not be used ({cause.Message}). Nothing was recorded; try again.", cause),
    };

    private static JournalUnavailableException Unwritable(string path, Exception cause) => new(
        $"The journal {path} cannot be opened for writing. "
        + "Check that its folder exists, is a folder and may be written to by you, or choose another path.", cause);
}

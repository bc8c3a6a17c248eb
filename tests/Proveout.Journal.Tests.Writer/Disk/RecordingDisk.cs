using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Proveout.Journal.Trials.Disk;

/// <summary>
/// Stands between SQLite and the operating system of this process (a VFS, sqlite.org/vfs.html): notes every write, cut, sync and removal in the order
/// in which SQLite asked for them, and can be full. The work itself is done by SQLite's own layer.
/// </summary>
public sealed unsafe partial class RecordingDisk : IDisposable
{
    private const int Ok = 0, Full = 13; // sqlite.org/rescode.html
    private const int Created = 0x4, AnyJournal = 0x800 | 0x4000 | 0x80000; // SQLITE_OPEN_CREATE; _MAIN_JOURNAL, _SUPER_JOURNAL, _WAL: sqlite.org/c3ref/c_open_autoproxy.html
    private const int StructBytes = 168, MethodsBytes = 152;

    // Places of pointers in sqlite3_vfs and sqlite3_io_methods with eight-byte pointers.
    private const int OpenAt = 40, DeleteAt = 48;
    private const int CloseAt = 8, WriteAt = 24, TruncateAt = 32, SyncAt = 40;

    private static readonly ConcurrentDictionary<nint, OpenFile> Files = new();
    private static readonly ConcurrentDictionary<nint, nint> Hooked = new();
    private static readonly ConcurrentDictionary<string, long> Lengths = new();
    private static RecordingDisk? s_disk;
    private static nint s_real;

    private readonly DiskLogWriter? _log;

    private RecordingDisk(DiskLogWriter? log) => _log = log;

    /// <summary>Bytes that all files together may have.</summary>
    public long MostBytes { get; set; } = long.MaxValue;

    /// <summary>From here on, every database that this process opens is on this disk.</summary>
    public static RecordingDisk Install(DiskLogWriter? log)
    {
        if (nint.Size != 8)
            throw new PlatformNotSupportedException("The places of pointers are those of a 64-bit process.");
        s_disk = new RecordingDisk(log);
        s_real = Find(0);
        var copy = (byte*)NativeMemory.AllocZeroed(StructBytes);
        Buffer.MemoryCopy((void*)s_real, copy, StructBytes, StructBytes);
        *(nint*)(copy + 24) = Marshal.StringToCoTaskMemUTF8("recording");
        *(delegate* unmanaged[Cdecl]<nint, byte*, nint, int, int*, int>*)(copy + OpenAt) = &Open;
        *(delegate* unmanaged[Cdecl]<nint, byte*, int, int>*)(copy + DeleteAt) = &Delete;
        if (Register((nint)copy, 1) != Ok)
            throw new InvalidOperationException("The disk could not be put in place.");
        return s_disk;
    }

    /// <summary>Notes that a user was told.</summary>
    public void Acknowledge(string line) => _log?.Add(new DiskEvent.Acknowledged(line));

    /// <summary>Nothing is noted any more; the files stay with this disk to the end of the process.</summary>
    public void Dispose()
    {
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Open(nint vfs, byte* name, nint file, int flags, int* outFlags)
    {
        var result = (*(delegate* unmanaged[Cdecl]<nint, byte*, nint, int, int*, int>*)(s_real + OpenAt))(s_real, name, file, flags, outFlags);
        var methods = *(nint*)file;
        if (result != Ok || name == null || methods == 0)
            return result;
        var path = Marshal.PtrToStringUTF8((nint)name)!;
        Files[file] = new OpenFile(Path.GetFileName(path), methods) { SyncsFolder = (flags & Created) != 0 && (flags & AnyJournal) != 0 };
        Lengths[Path.GetFileName(path)] = new FileInfo(path).Length;
        *(nint*)file = Hooked.GetOrAdd(methods, Hook);
        return result;
    }

    private static nint Hook(nint methods)
    {
        var copy = (byte*)NativeMemory.AllocZeroed(MethodsBytes);
        Buffer.MemoryCopy((void*)methods, copy, MethodsBytes, MethodsBytes);
        *(delegate* unmanaged[Cdecl]<nint, int>*)(copy + CloseAt) = &Close;
        *(delegate* unmanaged[Cdecl]<nint, byte*, int, long, int>*)(copy + WriteAt) = &Write;
        *(delegate* unmanaged[Cdecl]<nint, long, int>*)(copy + TruncateAt) = &Truncate;
        *(delegate* unmanaged[Cdecl]<nint, int, int>*)(copy + SyncAt) = &Sync;
        return (nint)copy;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Delete(nint vfs, byte* name, int syncFolder)
    {
        var result = (*(delegate* unmanaged[Cdecl]<nint, byte*, int, int>*)(s_real + DeleteAt))(s_real, name, syncFolder);
        var file = Path.GetFileName(Marshal.PtrToStringUTF8((nint)name)!);
        if (result == Ok)
            s_disk!._log?.Add(new DiskEvent.Removed(file, syncFolder != 0));
        Lengths.TryRemove(file, out _);
        return result;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Close(nint file)
    {
        Files.TryRemove(file, out var open);
        return (*(delegate* unmanaged[Cdecl]<nint, int>*)(open!.Methods + CloseAt))(file);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Write(nint file, byte* bytes, int count, long offset)
    {
        var open = Files[file];
        var grows = Math.Max(0, offset + count - Lengths.GetValueOrDefault(open.Name));
        if (grows > 0 && Lengths.Values.Sum() + grows > s_disk!.MostBytes)
            return Full;
        var result = (*(delegate* unmanaged[Cdecl]<nint, byte*, int, long, int>*)(open.Methods + WriteAt))(file, bytes, count, offset);
        Lengths[open.Name] = Lengths.GetValueOrDefault(open.Name) + grows;
        s_disk!._log?.Add(new DiskEvent.Written(open.Name, offset, new ReadOnlySpan<byte>(bytes, count).ToArray()));
        return result;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Truncate(nint file, long length)
    {
        var open = Files[file];
        var result = (*(delegate* unmanaged[Cdecl]<nint, long, int>*)(open.Methods + TruncateAt))(file, length);
        Lengths[open.Name] = length;
        s_disk!._log?.Add(new DiskEvent.Cut(open.Name, length));
        return result;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Sync(nint file, int flags)
    {
        var open = Files[file];
        var result = (*(delegate* unmanaged[Cdecl]<nint, int, int>*)(open.Methods + SyncAt))(file, flags);
        if (result == Ok)
        {
            s_disk!._log?.Add(new DiskEvent.Synced(open.Name, open.SyncsFolder));
            open.SyncsFolder = false;
        }
        return result;
    }

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_vfs_find")]
    private static partial nint Find(nint name);

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_vfs_register")]
    private static partial int Register(nint vfs, int isDefault);

    private sealed record OpenFile(string Name, nint Methods)
    {
        /// <summary>SQLite's layer for Unix syncs the folder too at the first sync of a journal or write-ahead file that it may have made.</summary>
        public bool SyncsFolder { get; set; }
    }
}

namespace Proveout.Journal.Trials.Disk;

/// <summary>
/// What a disk may hold when its power is cut: all that was synced, and of what was written since, in each file, any of its sectors or none. Sectors
/// are of 512 bytes, the smallest that disks have; what was not written is left as it was (what SQLite calls powersafe overwrite). Which files there
/// are is certain only since the folder was synced: a file made since may be missing, a file removed since may be back.
/// </summary>
/// <param name="syncs">False for a disk that lies: it says that it synced and did not.</param>
public sealed class UnpluggedDisk(bool syncs)
{
    private const int SectorBytes = 512;
    private readonly Dictionary<string, KeptFile> _files = [];

    /// <summary>The next thing happens.</summary>
    public void Take(DiskEvent happened)
    {
        switch (happened)
        {
            case DiskEvent.Written written:
                File(written.File).Pending.Add(written);
                break;
            case DiskEvent.Cut cut:
                File(cut.File).Pending.Add(cut);
                break;
            case DiskEvent.Synced synced when syncs:
                Settle(File(synced.File));
                if (synced.WithFolder)
                    SettleFolder();
                break;
            case DiskEvent.Removed removed:
                File(removed.File).IsRemoved = true;
                if (removed.WithFolder)
                    SettleFolder();
                break;
        }
    }

    /// <summary>The files after the power comes back.</summary>
    public IEnumerable<(string Name, byte[] Bytes)> After(Random random)
    {
        var way = (Way)random.Next(Enum.GetValues<Way>().Length);
        foreach (var (name, file) in _files)
        {
            if ((!file.IsNamed || file.IsRemoved) && random.Next(2) == 0)
                continue;
            using var bytes = new MemoryStream();
            bytes.Write(file.Synced.GetBuffer(), 0, (int)file.Synced.Length);
            Lose(file.Pending, bytes, way, random);
            yield return (name, bytes.ToArray());
        }
    }

    private static void Lose(List<DiskEvent> pending, MemoryStream bytes, Way way, Random random)
    {
        var left = way == Way.InOrder ? random.NextInt64(1 + pending.OfType<DiskEvent.Written>().Sum(written => (long)written.Bytes.Length)) : long.MaxValue;
        foreach (var each in pending)
        {
            if (way == Way.Nothing)
                break;
            if (each is DiskEvent.Cut cut && (way != Way.AnySectors || random.Next(2) == 0))
                bytes.SetLength(cut.Length);
            if (each is not DiskEvent.Written written)
                continue;
            for (var at = 0; at < written.Bytes.Length;)
            {
                var count = (int)Math.Min(written.Bytes.Length - at, SectorBytes - ((written.Offset + at) % SectorBytes));
                // In order, the last sector is torn at any byte.
                var kept = way == Way.AnySectors && random.Next(2) == 0 ? 0 : (int)Math.Min(count, left);
                Write(bytes, written.Offset + at, written.Bytes.AsSpan(at, kept));
                left -= kept;
                at += count;
            }
        }
    }

    private static void Write(MemoryStream bytes, long offset, ReadOnlySpan<byte> written)
    {
        if (written.IsEmpty)
            return;
        if (bytes.Length < offset)
            bytes.SetLength(offset);
        bytes.Position = offset;
        bytes.Write(written);
    }

    private static void Settle(KeptFile file)
    {
        Lose(file.Pending, file.Synced, Way.Everything, new Random(0));
        file.Pending.Clear();
    }

    private void SettleFolder()
    {
        foreach (var (name, file) in _files.ToList())
            if (file.IsRemoved)
                _files.Remove(name);
            else
                file.IsNamed = true;
    }

    private KeptFile File(string name)
    {
        if (_files.TryGetValue(name, out var file) && !file.IsRemoved)
            return file;
        return _files[name] = new KeptFile();
    }

    private enum Way
    {
        Nothing,
        Everything,
        InOrder,
        AnySectors,
    }

    private sealed class KeptFile
    {
        public MemoryStream Synced { get; } = new();

        public List<DiskEvent> Pending { get; } = [];

        /// <summary>The folder has it.</summary>
        public bool IsNamed { get; set; }

        public bool IsRemoved { get; set; }
    }
}

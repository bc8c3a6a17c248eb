namespace Proveout.Journal.Trials.Disk;

/// <summary>Writes events one after the other.</summary>
public sealed class DiskLogWriter(Stream target) : IDisposable
{
    private readonly BinaryWriter _writer = new(target);
    private readonly Lock _turn = new();

    public void Add(DiskEvent happened)
    {
        lock (_turn)
        {
            switch (happened)
            {
                case DiskEvent.Written written:
                    Begin('w', written.File);
                    _writer.Write(written.Offset);
                    _writer.Write(written.Bytes.Length);
                    _writer.Write(written.Bytes);
                    break;
                case DiskEvent.Cut cut:
                    Begin('c', cut.File);
                    _writer.Write(cut.Length);
                    break;
                case DiskEvent.Synced synced:
                    Begin('s', synced.File);
                    _writer.Write(synced.WithFolder);
                    break;
                case DiskEvent.Removed removed:
                    Begin('r', removed.File);
                    _writer.Write(removed.WithFolder);
                    break;
                case DiskEvent.Acknowledged acknowledged:
                    Begin('a', acknowledged.Line);
                    break;
            }
            _writer.Flush();
        }
    }

    public void Dispose() => _writer.Dispose();

    /// <summary>Reads them back.</summary>
    public static IReadOnlyList<DiskEvent> Read(string path)
    {
        using var reader = new BinaryReader(File.OpenRead(path));
        var events = new List<DiskEvent>();
        while (reader.BaseStream.Position < reader.BaseStream.Length)
        {
            var (kind, name) = (reader.ReadChar(), reader.ReadString());
            events.Add(kind switch
            {
                'w' => new DiskEvent.Written(name, reader.ReadInt64(), reader.ReadBytes(reader.ReadInt32())),
                'c' => new DiskEvent.Cut(name, reader.ReadInt64()),
                's' => new DiskEvent.Synced(name, reader.ReadBoolean()),
                'r' => new DiskEvent.Removed(name, reader.ReadBoolean()),
                _ => new DiskEvent.Acknowledged(name),
            });
        }
        return events;
    }

    private void Begin(char kind, string name)
    {
        _writer.Write(kind);
        _writer.Write(name);
    }
}

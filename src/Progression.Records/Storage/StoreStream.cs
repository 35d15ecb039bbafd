using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// An open file of the store as a stream of its own position. A session that only reads must not write, whatever the engine would like: LiteDB 5
/// crops and rewrites files even when told to read only. Being durable is the session's business, not this stream's.
/// </summary>
internal sealed class StoreStream(SafeFileHandle file, bool writable) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => writable;

    public override long Length => RandomAccess.GetLength(file);

    public override long Position { get; set; }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int read = RandomAccess.Read(file, buffer, Position);
        Position += read;
        return read;
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        Require();
        RandomAccess.Write(file, buffer.AsSpan(offset, count), Position);
        Position += count;
    }

    public override void SetLength(long value)
    {
        Require();
        RandomAccess.SetLength(file, value);
    }

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => Position + offset,
        _ => Length + offset,
    };

    public override void Flush()
    {
    }

    private void Require()
    {
        if (!writable)
        {
            throw new NotSupportedException("A reading session does not write.");
        }
    }
}

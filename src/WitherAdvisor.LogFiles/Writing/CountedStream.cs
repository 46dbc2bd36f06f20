namespace WitherAdvisor.LogFiles.Writing;

/// <summary>A body that knows how much was written to it: Parquet notes where in the file each part stands, and a body cannot be asked.</summary>
internal sealed class CountedStream(Stream body) : Stream
{
    private long written;

    public override bool CanRead => false;

    public override bool CanSeek => true;

    public override bool CanWrite => true;

    public override long Length => written;

    public override long Position
    {
        get => written;
        set => throw new NotSupportedException("What was sent is gone.");
    }

    public override async ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
    {
        await body.WriteAsync(buffer, cancellationToken);
        written += buffer.Length;
    }

    public override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        WriteAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override void Write(byte[] buffer, int offset, int count) => body.WriteAsync(buffer, offset, count).GetAwaiter().GetResult();

    public override Task FlushAsync(CancellationToken cancellationToken) => body.FlushAsync(cancellationToken);

    public override void Flush()
    {
        // The body is flushed when the answer ends.
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}

using ColdSim.Files.Disk;

namespace ColdSim.Tests.Files.Disk;

/// <summary>A step of a write that may fail.</summary>
public enum DiskStep
{
    Write,
    Flush,
    Rename,
}

/// <summary>A disk on which one step fails.</summary>
/// <param name="fails">The step.</param>
/// <param name="bytes">For a write: how many bytes still fit.</param>
/// <param name="files">How many files are written before the step fails.</param>
internal sealed class FailingDisk(DiskStep fails, long bytes = 0, int files = 0) : DiskCalls
{
    private const int DiskFull = 28;

    private int _files = files;

    /// <summary>How often it failed.</summary>
    public int Faults { get; private set; }

    public override Stream Through(FileStream file) => _files-- <= 0 && fails == DiskStep.Write ? new Full(this, file, bytes) : file;

    public override void FlushToDisk(FileStream file)
    {
        if (_files < 0 && fails == DiskStep.Flush)
            throw Fault();
        base.FlushToDisk(file);
    }

    public override void Rename(string draft, string target)
    {
        if (_files < 0 && fails == DiskStep.Rename)
            throw Fault();
        base.Rename(draft, target);
    }

    private IOException Fault()
    {
        Faults++;
        return new IOException("the runtime's words", DiskFull);
    }

    // Like a real disk, it takes what fits before it fails.
    private sealed class Full(FailingDisk disk, FileStream inner, long left) : Stream
    {
        private long _left = left;

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override void Write(byte[] buffer, int offset, int count)
        {
            int fits = (int)Math.Min(count, _left);
            inner.Write(buffer, offset, fits);
            _left -= fits;
            if (fits < count)
                throw disk.Fault();
        }

        public override void Flush() => inner.Flush();

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();
    }
}

using System.Text;
using ColdSim.Files.Disk;

namespace ColdSim.App;

/// <summary>The streams of the process, whether or not it was given them.</summary>
internal static class StandardStreams
{
    private const int OutputNumber = 1, ErrorNumber = 2;

    /// <summary>Standard output. Nothing happens where it is closed; where it takes nothing more, that is a fault in our words.</summary>
    public static Stream Output()
        => SystemCalls.IsInherited(OutputNumber) ? new TargetStream(Console.OpenStandardOutput(), FileFaultException.OutputNotWritten) : Stream.Null;

    /// <summary>Standard error. Where it is closed or takes nothing more, what is said there is lost, and nothing else.</summary>
    public static TextWriter Error()
    {
        if (!SystemCalls.IsInherited(ErrorNumber))
            return TextWriter.Null;
        StreamWriter error = new(new LossyStream(Console.OpenStandardError()), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
        return TextWriter.Synchronized(error);
    }

    private sealed class LossyStream(Stream inner) : ForwardWriteStream
    {
        public override void Write(ReadOnlySpan<byte> buffer)
        {
            try
            {
                inner.Write(buffer);
            }
            catch (Exception e) when (FileFaultException.IsOfWrite(e))
            {
                // There is no other place to say it.
            }
        }

        public override void Flush()
        {
        }
    }
}

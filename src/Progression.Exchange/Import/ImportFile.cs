using System.Globalization;
using Progression.Core.Entry;

namespace Progression.Exchange.Import;

/// <summary>The bytes of a file of another program; what is too large is refused by its size, before it is read.</summary>
public static class ImportFile
{
    /// <summary>The bytes, or why there are none.</summary>
    /// <param name="path">The file as the person named it.</param>
    public static Entered<byte[]> Read(string path)
    {
        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return file.CanSeek && file.Length > ImportGround.MostBytes ? TooLong(file.Length) : Read(file);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refused("The file cannot be read.", "a file that can be read", Found.Of(path));
        }
    }

    /// <summary>The bytes of a stream that may never end.</summary>
    public static Entered<byte[]> Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using MemoryStream all = new();
        byte[] buffer = new byte[65_536];
        for (int read; (read = stream.Read(buffer)) > 0;)
        {
            all.Write(buffer, 0, read);
            if (all.Length > ImportGround.MostBytes)
            {
                return TooLong(all.Length);
            }
        }

        return Entered<byte[]>.Good(all.ToArray());
    }

    private static Entered<byte[]> TooLong(long bytes) => Refused(
        "The file is too large to be one of a single knee.",
        string.Create(CultureInfo.InvariantCulture, $"at most {ImportGround.MostBytes} bytes"),
        string.Create(CultureInfo.InvariantCulture, $"{bytes} bytes or more"));

    private static Entered<byte[]> Refused(string wrong, string allowed, string found) => Entered<byte[]>.Bad(new Problem("file", wrong, allowed, found));
}

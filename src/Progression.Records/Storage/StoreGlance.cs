using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>Looks at a store from outside, without its lock and without making anything.</summary>
/// <param name="path">The folder.</param>
internal sealed class StoreGlance(string path)
{
    private readonly StoreFolder _folder = new(path);

    /// <summary>
    /// Number of the last save as the mark tells; null when mark and journal do not agree, as while somebody saves, or there is no mark. Whoever gets a number
    /// other than the one they know asks again under the lock: the mark may have been read while it was being written.
    /// </summary>
    public long? Saves()
    {
        const int flags = NativeFile.ReadWrite | NativeFile.CloseOnExec;
        using SafeFileHandle file = NativeFile.Open(_folder.Mark, flags | NativeFile.NoFollow, 0, out int error);
        try
        {
            return error == 0 && IndexMark.Read(file) is { } mark && mark.Length == new FileInfo(_folder.Journal).Length ? mark.Saves : null;
        }
        catch (IOException)
        {
            return null;
        }
    }
}

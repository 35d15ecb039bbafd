using System.Globalization;

// A second process for the store's tests: the first word says what it does, in which folder, and what else that needs.
return args switch
{
    ["append", string folder, string caseCode, string writer, string count] => Driver.Append(folder, caseCode, writer, int.Parse(count, CultureInfo.InvariantCulture)),
    ["hold", string folder] => Driver.Hold(folder),
    ["pause", string folder] => Driver.Pause(folder),
    ["fill", string folder] => FullDisk.Fill(folder),
    ["squeeze", string mount, string kilobytes] => FullDisk.Squeeze(mount, int.Parse(kilobytes, CultureInfo.InvariantCulture)),
    ["once", string folder, string caseCode, string revision, string hash, string writer] => Driver.Once(folder, caseCode, new(int.Parse(revision, CultureInfo.InvariantCulture), hash), writer),
    ["read", string folder, string caseCode] => Driver.Read(folder, caseCode),
    ["bare", string file, string count] => BareLibrary.Count(file, int.Parse(count, CultureInfo.InvariantCulture)),
    ["bare-count", string file] => BareLibrary.Tell(file),
    _ => 2,
};

using System.Security.Cryptography;
using System.Text;

namespace Progression.Records.Storage;

/// <summary>SHA-256 as 64 lower-case hexadecimal digits.</summary>
internal static class Sha256Text
{
    public const int Length = 64;

    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string Of(string text) => Of(Encoding.UTF8.GetBytes(text));
}

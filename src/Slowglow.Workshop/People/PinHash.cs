using System.Globalization;
using System.Security.Cryptography;

namespace Slowglow.Workshop.People;

/// <summary>PINs as they are stored: PBKDF2 (RFC 8018) with HMAC-SHA-256, a salt of its own each, slow on purpose.</summary>
public static class PinHash
{
    /// <summary>Rounds; the figure that OWASP's password storage sheet gave for this function in 2023, from memory.</summary>
    private const int Rounds = 600_000;
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>Rounds, salt and hash, by which it can be told again; the PIN itself cannot be read out of it.</summary>
    public static string Of(string pin)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Rounds}.{Convert.ToBase64String(salt)}.{Convert.ToBase64String(Hash(pin, salt, Rounds))}"
        );
    }

    /// <summary>True when it was made of that PIN; false for anything that is no such hash.</summary>
    public static bool Fits(string pin, string stored)
    {
        var parts = stored.Split('.');
        if (
            parts.Length != 3
            || !int.TryParse(parts[0], CultureInfo.InvariantCulture, out var rounds)
            || rounds is < 1 or > 10_000_000
        )
        {
            return false;
        }

        try
        {
            var salt = Convert.FromBase64String(parts[1]);
            return CryptographicOperations.FixedTimeEquals(Hash(pin, salt, rounds), Convert.FromBase64String(parts[2]));
        }
        catch (FormatException)
        {
            return false;
        }
    }

    private static byte[] Hash(string pin, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(pin, salt, rounds, HashAlgorithmName.SHA256, HashBytes);
}

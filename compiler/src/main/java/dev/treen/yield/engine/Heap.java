package dev.treen.yield.engine;

import java.util.Arrays;

/** Numbers that wait for their turn by what they promise, the most first. Of equal promise the latest goes first. */
final class Heap {
    private int[] number = new int[1024];
    private long[] key = new long[1024];
    private int size;

    /** A promise as a key: of two, the greater number has the greater key. */
    static long key(double promise) {
        // With the sign bit set, the rest of it counts backwards; a zero has one sign here.
        long bits = Double.doubleToLongBits(promise + 0.0);
        return bits ^ (bits >> 63 & Long.MAX_VALUE);
    }

    int size() {
        return size;
    }

    /** One of those that wait, from 0, in no order. */
    int waiting(int i) {
        return number[i];
    }

    void clear() {
        size = 0;
    }

    void push(int n, long promise) {
        if (size == number.length) {
            number = Arrays.copyOf(number, 2 * size);
            key = Arrays.copyOf(key, 2 * size);
        }
        int i = size++;
        while (i > 0 && before(promise, n, (i - 1) / 2)) {
            number[i] = number[(i - 1) / 2];
            key[i] = key[(i - 1) / 2];
            i = (i - 1) / 2;
        }
        number[i] = n;
        key[i] = promise;
    }

    int pop() {
        int top = number[0];
        int n = number[--size];
        long promise = key[size];
        int i = 0;
        while (2 * i + 1 < size) {
            int c = 2 * i + 1;
            if (c + 1 < size && before(key[c + 1], number[c + 1], c)) {
                c++;
            }
            if (before(promise, n, c)) {
                break;
            }
            number[i] = number[c];
            key[i] = key[c];
            i = c;
        }
        number[i] = n;
        key[i] = promise;
        return top;
    }

    private boolean before(long promise, int n, int at) {
        return promise != key[at] ? promise > key[at] : n > number[at];
    }
}

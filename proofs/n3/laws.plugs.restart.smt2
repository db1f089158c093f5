; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/laws.md of cairn tells the lemma, with a
; proof by hand for every number of devices. Written by proofs/generate, from the formulas that
; cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
(declare-const |power of d1 is off| Bool)
(declare-const |power of d1 is starting| Bool)
(declare-const |power of d1 is up| Bool)
(declare-const |power of d1 is held| Bool)
(declare-const |leader of d1 is none| Bool)
(declare-const |leader of d1 is d1| Bool)
(declare-const |leader of d1 is d2| Bool)
(declare-const |leader of d1 is d3| Bool)
(declare-const |number of d1 is 1| Bool)
(declare-const |number of d1 is 2| Bool)
(declare-const |number of d1 is 3| Bool)
(declare-const |next number of d1 is 1| Bool)
(declare-const |next number of d1 is 2| Bool)
(declare-const |next number of d1 is 3| Bool)
(declare-const |priority of d1 is 1| Bool)
(declare-const |priority of d1 is 2| Bool)
(declare-const |priority of d1 is 3| Bool)
(declare-const |startup priority of d1 is 1| Bool)
(declare-const |startup priority of d1 is 2| Bool)
(declare-const |startup priority of d1 is 3| Bool)
(declare-const |power of d2 is off| Bool)
(declare-const |power of d2 is starting| Bool)
(declare-const |power of d2 is up| Bool)
(declare-const |power of d2 is held| Bool)
(declare-const |leader of d2 is none| Bool)
(declare-const |leader of d2 is d1| Bool)
(declare-const |leader of d2 is d2| Bool)
(declare-const |leader of d2 is d3| Bool)
(declare-const |number of d2 is 1| Bool)
(declare-const |number of d2 is 2| Bool)
(declare-const |number of d2 is 3| Bool)
(declare-const |next number of d2 is 1| Bool)
(declare-const |next number of d2 is 2| Bool)
(declare-const |next number of d2 is 3| Bool)
(declare-const |priority of d2 is 1| Bool)
(declare-const |priority of d2 is 2| Bool)
(declare-const |priority of d2 is 3| Bool)
(declare-const |startup priority of d2 is 1| Bool)
(declare-const |startup priority of d2 is 2| Bool)
(declare-const |startup priority of d2 is 3| Bool)
(declare-const |power of d3 is off| Bool)
(declare-const |power of d3 is starting| Bool)
(declare-const |power of d3 is up| Bool)
(declare-const |power of d3 is held| Bool)
(declare-const |leader of d3 is none| Bool)
(declare-const |leader of d3 is d1| Bool)
(declare-const |leader of d3 is d2| Bool)
(declare-const |leader of d3 is d3| Bool)
(declare-const |number of d3 is 1| Bool)
(declare-const |number of d3 is 2| Bool)
(declare-const |number of d3 is 3| Bool)
(declare-const |next number of d3 is 1| Bool)
(declare-const |next number of d3 is 2| Bool)
(declare-const |next number of d3 is 3| Bool)
(declare-const |priority of d3 is 1| Bool)
(declare-const |priority of d3 is 2| Bool)
(declare-const |priority of d3 is 3| Bool)
(declare-const |startup priority of d3 is 1| Bool)
(declare-const |startup priority of d3 is 2| Bool)
(declare-const |startup priority of d3 is 3| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |rival plugged| Bool)
(declare-const |s1 done| Bool)
(declare-const |s2 done| Bool)
(declare-const |s3 done| Bool)
(declare-const |s4 done| Bool)
(declare-const |s5 done| Bool)
(declare-const |s6 done| Bool)
(declare-const |s7 done| Bool)
(declare-const |s8 done| Bool)
(declare-const |s9 done| Bool)
(declare-const |s10 done| Bool)
(declare-const |s11 done| Bool)
(declare-const |s12 done| Bool)
(declare-const |s13 done| Bool)
(declare-const |s14 done| Bool)
(declare-const |s15 done| Bool)
(declare-const |cable breaks left is 1| Bool)
(declare-const |crashes left is 1| Bool)
(declare-const |omissions left is 1| Bool)
(declare-const |late starts left is 1| Bool)
(declare-const |halted| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) (and (not |power of d1 is off|) (not |power of d1 is starting|))) (or
    (not |power of d1 is held|) (and (not |power of d1 is off|) (not |power of d1 is starting|)
    (not |power of d1 is up|))) (or |leader of d1 is none| |leader of d1 is d1| |leader of d1 is d2|
    |leader of d1 is d3|) (or (not |leader of d1 is none|) (not |leader of d1 is d1|)) (or
    (not |leader of d1 is d2|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|))) (or
    (not |leader of d1 is d3|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|)
    (not |leader of d1 is d2|))) (or |number of d1 is 1| |number of d1 is 2| |number of d1 is 3|)
    (or (not |number of d1 is 1|) (not |number of d1 is 2|)) (or (not |number of d1 is 3|) (and
    (not |number of d1 is 1|) (not |number of d1 is 2|))) (or |next number of d1 is 1|
    |next number of d1 is 2| |next number of d1 is 3|) (or (not |next number of d1 is 1|)
    (not |next number of d1 is 2|)) (or (not |next number of d1 is 3|) (and
    (not |next number of d1 is 1|) (not |next number of d1 is 2|))) (or |priority of d1 is 1|
    |priority of d1 is 2| |priority of d1 is 3|) (or (not |priority of d1 is 1|)
    (not |priority of d1 is 2|)) (or (not |priority of d1 is 3|) (and (not |priority of d1 is 1|)
    (not |priority of d1 is 2|))) (or |startup priority of d1 is 1| |startup priority of d1 is 2|
    |startup priority of d1 is 3|) (or (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|)) (or (not |startup priority of d1 is 3|) (and
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|))) (or
    |power of d2 is off| |power of d2 is starting| |power of d2 is up| |power of d2 is held|) (or
    (not |power of d2 is off|) (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|))) (or (not |power of d2 is held|)
    (and (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n2 Bool)
(assert (= n2 (and n1 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
    |leader of d2 is d3|) (or (not |leader of d2 is none|) (not |leader of d2 is d1|)) (or
    (not |leader of d2 is d2|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|))) (or
    (not |leader of d2 is d3|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|)
    (not |leader of d2 is d2|))) (or |number of d2 is 1| |number of d2 is 2| |number of d2 is 3|)
    (or (not |number of d2 is 1|) (not |number of d2 is 2|)) (or (not |number of d2 is 3|) (and
    (not |number of d2 is 1|) (not |number of d2 is 2|))) (or |next number of d2 is 1|
    |next number of d2 is 2| |next number of d2 is 3|) (or (not |next number of d2 is 1|)
    (not |next number of d2 is 2|)) (or (not |next number of d2 is 3|) (and
    (not |next number of d2 is 1|) (not |next number of d2 is 2|))) (or |priority of d2 is 1|
    |priority of d2 is 2| |priority of d2 is 3|) (or (not |priority of d2 is 1|)
    (not |priority of d2 is 2|)) (or (not |priority of d2 is 3|) (and (not |priority of d2 is 1|)
    (not |priority of d2 is 2|))) (or |startup priority of d2 is 1| |startup priority of d2 is 2|
    |startup priority of d2 is 3|) (or (not |startup priority of d2 is 1|)
    (not |startup priority of d2 is 2|)) (or (not |startup priority of d2 is 3|) (and
    (not |startup priority of d2 is 1|) (not |startup priority of d2 is 2|))) (or
    |power of d3 is off| |power of d3 is starting| |power of d3 is up| |power of d3 is held|) (or
    (not |power of d3 is off|) (not |power of d3 is starting|)) (or (not |power of d3 is up|) (and
    (not |power of d3 is off|) (not |power of d3 is starting|))) (or (not |power of d3 is held|)
    (and (not |power of d3 is off|) (not |power of d3 is starting|) (not |power of d3 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and |d1--d2 plugged| |rival plugged|)))
(declare-const n4 Bool)
(assert (= n4 (and |d1--d3 plugged| |rival plugged|)))
(declare-const n5 Bool)
(assert (= n5 (and (not n3) (not n4))))
; Every variable has one value.
(assert (and n2 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
    |leader of d3 is d3|) (or (not |leader of d3 is none|) (not |leader of d3 is d1|)) (or
    (not |leader of d3 is d2|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|))) (or
    (not |leader of d3 is d3|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|)
    (not |leader of d3 is d2|))) (or |number of d3 is 1| |number of d3 is 2| |number of d3 is 3|)
    (or (not |number of d3 is 1|) (not |number of d3 is 2|)) (or (not |number of d3 is 3|) (and
    (not |number of d3 is 1|) (not |number of d3 is 2|))) (or |next number of d3 is 1|
    |next number of d3 is 2| |next number of d3 is 3|) (or (not |next number of d3 is 1|)
    (not |next number of d3 is 2|)) (or (not |next number of d3 is 3|) (and
    (not |next number of d3 is 1|) (not |next number of d3 is 2|))) (or |priority of d3 is 1|
    |priority of d3 is 2| |priority of d3 is 3|) (or (not |priority of d3 is 1|)
    (not |priority of d3 is 2|)) (or (not |priority of d3 is 3|) (and (not |priority of d3 is 1|)
    (not |priority of d3 is 2|))) (or |startup priority of d3 is 1| |startup priority of d3 is 2|
    |startup priority of d3 is 3|) (or (not |startup priority of d3 is 1|)
    (not |startup priority of d3 is 2|)) (or (not |startup priority of d3 is 3|) (and
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|)))))
; Before: Of the cables of a port at most one is plugged.
(assert n5)
; And this is false: the same after every event that may happen, after a cold start, and after a
; pass.
(assert (or n3 n4 (and (not |s1 done|) (not |halted|) (not n5)) (and (not |s2 done|) (not |halted|)
    (not n5)) (and (not |s3 done|) (not |halted|) (not n5)) (and (not |s4 done|) (not |halted|)
    (not n5)) (and (not |s5 done|) (not |halted|) (not n5)) (and (not |s6 done|) (not |halted|)
    (not n5)) (and (not |s7 done|) (not |halted|) (not n5)) (and (not |s8 done|) (not |halted|)
    (not n5)) (and (not |s9 done|) (not |halted|) (not n5)) (and (not |s10 done|) (not |halted|)
    (not n5)) (and (not |s11 done|) (not |halted|) (not n5)) (and (not |s12 done|) (not |halted|)
    (not n5)) (and |d1--d3 plugged| |rival plugged| (not |s13 done|) (not |halted|)) (and
    (not |s14 done|) (not |halted|) (not n5)) (and (not |s15 done|) (not |halted|) (not n5)) (and
    |power of d1 is starting| (not n5)) (and |power of d2 is starting| (not n5)) (and
    |power of d3 is starting| (not n5)) (and |d1--d2 plugged| |cable breaks left is 1| (not n5))
    (and |d1--d3 plugged| |cable breaks left is 1| (not n5)) (and |d2--d3 plugged|
    |cable breaks left is 1| (not n5)) (and |rival plugged| |cable breaks left is 1| (not n5)) (and
    |power of d1 is up| |crashes left is 1| (not n5)) (and |power of d2 is up| |crashes left is 1|
    (not n5)) (and |power of d3 is up| |crashes left is 1| (not n5)) (and (not |s1 done|)
    |omissions left is 1| (not |halted|) (not n5)) (and (not |s2 done|) |omissions left is 1|
    (not |halted|) (not n5)) (and (not |s3 done|) |omissions left is 1| (not |halted|) (not n5))
    (and (not |s4 done|) |omissions left is 1| (not |halted|) (not n5)) (and (not |s5 done|)
    |omissions left is 1| (not |halted|) (not n5)) (and (not |s6 done|) |omissions left is 1|
    (not |halted|) (not n5)) (and (not |s7 done|) |omissions left is 1| (not |halted|) (not n5))
    (and (not |s8 done|) |omissions left is 1| (not |halted|) (not n5)) (and (not |s9 done|)
    |omissions left is 1| (not |halted|) (not n5)) (and (not |s10 done|) |omissions left is 1|
    (not |halted|) (not n5)) (and (not |s11 done|) |omissions left is 1| (not |halted|) (not n5))
    (and (not |s12 done|) |omissions left is 1| (not |halted|) (not n5)) (and (not |s13 done|)
    |omissions left is 1| (not |halted|) (not n5)) (and |power of d1 is starting|
    |late starts left is 1| (not n5)) (and |power of d2 is starting| |late starts left is 1|
    (not n5)) (and |power of d3 is starting| |late starts left is 1| (not n5))))
(check-sat)
(exit)

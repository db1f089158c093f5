; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/unasked-seniority.md of cairn tells the
; lemma, with a proof by hand for every number of devices. Written by proofs/generate, from the
; formulas that cairn proves with.
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
(declare-const |d1 senior to d2| Bool)
(declare-const |d1 senior to d3| Bool)
(declare-const |d2 senior to d1| Bool)
(declare-const |d2 senior to d3| Bool)
(declare-const |d3 senior to d1| Bool)
(declare-const |d3 senior to d2| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |power of d1 is off'| Bool)
(declare-const |power of d1 is starting'| Bool)
(declare-const |power of d1 is up'| Bool)
(declare-const |power of d1 is held'| Bool)
(declare-const |leader of d1 is none'| Bool)
(declare-const |leader of d1 is d1'| Bool)
(declare-const |leader of d1 is d2'| Bool)
(declare-const |leader of d1 is d3'| Bool)
(declare-const |number of d1 is 1'| Bool)
(declare-const |number of d1 is 2'| Bool)
(declare-const |number of d1 is 3'| Bool)
(declare-const |next number of d1 is 1'| Bool)
(declare-const |next number of d1 is 2'| Bool)
(declare-const |next number of d1 is 3'| Bool)
(declare-const |priority of d1 is 1'| Bool)
(declare-const |priority of d1 is 2'| Bool)
(declare-const |priority of d1 is 3'| Bool)
(declare-const |startup priority of d1 is 1'| Bool)
(declare-const |startup priority of d1 is 2'| Bool)
(declare-const |startup priority of d1 is 3'| Bool)
(declare-const |power of d2 is off'| Bool)
(declare-const |power of d2 is starting'| Bool)
(declare-const |power of d2 is up'| Bool)
(declare-const |power of d2 is held'| Bool)
(declare-const |leader of d2 is none'| Bool)
(declare-const |leader of d2 is d1'| Bool)
(declare-const |leader of d2 is d2'| Bool)
(declare-const |leader of d2 is d3'| Bool)
(declare-const |number of d2 is 1'| Bool)
(declare-const |number of d2 is 2'| Bool)
(declare-const |number of d2 is 3'| Bool)
(declare-const |next number of d2 is 1'| Bool)
(declare-const |next number of d2 is 2'| Bool)
(declare-const |next number of d2 is 3'| Bool)
(declare-const |priority of d2 is 1'| Bool)
(declare-const |priority of d2 is 2'| Bool)
(declare-const |priority of d2 is 3'| Bool)
(declare-const |startup priority of d2 is 1'| Bool)
(declare-const |startup priority of d2 is 2'| Bool)
(declare-const |startup priority of d2 is 3'| Bool)
(declare-const |power of d3 is off'| Bool)
(declare-const |power of d3 is starting'| Bool)
(declare-const |power of d3 is up'| Bool)
(declare-const |power of d3 is held'| Bool)
(declare-const |leader of d3 is none'| Bool)
(declare-const |leader of d3 is d1'| Bool)
(declare-const |leader of d3 is d2'| Bool)
(declare-const |leader of d3 is d3'| Bool)
(declare-const |number of d3 is 1'| Bool)
(declare-const |number of d3 is 2'| Bool)
(declare-const |number of d3 is 3'| Bool)
(declare-const |next number of d3 is 1'| Bool)
(declare-const |next number of d3 is 2'| Bool)
(declare-const |next number of d3 is 3'| Bool)
(declare-const |priority of d3 is 1'| Bool)
(declare-const |priority of d3 is 2'| Bool)
(declare-const |priority of d3 is 3'| Bool)
(declare-const |startup priority of d3 is 1'| Bool)
(declare-const |startup priority of d3 is 2'| Bool)
(declare-const |startup priority of d3 is 3'| Bool)
(declare-const |d1 senior to d2'| Bool)
(declare-const |d1 senior to d3'| Bool)
(declare-const |d2 senior to d1'| Bool)
(declare-const |d2 senior to d3'| Bool)
(declare-const |d3 senior to d1'| Bool)
(declare-const |d3 senior to d2'| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (not |leader of d1 is none|) (not |leader of d1 is d1|))))
(declare-const n2 Bool)
(assert (= n2 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) (and (not |power of d1 is off|) (not |power of d1 is starting|))) (or
    (not |power of d1 is held|) (and (not |power of d1 is off|) (not |power of d1 is starting|)
    (not |power of d1 is up|))) (or |leader of d1 is none| |leader of d1 is d1| |leader of d1 is d2|
    |leader of d1 is d3|) (or (not |leader of d1 is none|) (not |leader of d1 is d1|)) (or
    (not |leader of d1 is d2|) n1) (or (not |leader of d1 is d3|) (and (not |leader of d1 is none|)
    (not |leader of d1 is d1|) (not |leader of d1 is d2|))) (or |number of d1 is 1|
    |number of d1 is 2| |number of d1 is 3|) (or (not |number of d1 is 1|) (not |number of d1 is 2|))
    (or (not |number of d1 is 3|) (and (not |number of d1 is 1|) (not |number of d1 is 2|))) (or
    |next number of d1 is 1| |next number of d1 is 2| |next number of d1 is 3|) (or
    (not |next number of d1 is 1|) (not |next number of d1 is 2|)) (or
    (not |next number of d1 is 3|) (and (not |next number of d1 is 1|)
    (not |next number of d1 is 2|))) (or |priority of d1 is 1| |priority of d1 is 2|
    |priority of d1 is 3|) (or (not |priority of d1 is 1|) (not |priority of d1 is 2|)) (or
    (not |priority of d1 is 3|) (and (not |priority of d1 is 1|) (not |priority of d1 is 2|))) (or
    |startup priority of d1 is 1| |startup priority of d1 is 2| |startup priority of d1 is 3|) (or
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|)) (or
    (not |startup priority of d1 is 3|) (and (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|))) (or |power of d2 is off| |power of d2 is starting|
    |power of d2 is up| |power of d2 is held|) (or (not |power of d2 is off|)
    (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and (not |power of d2 is off|)
    (not |power of d2 is starting|))) (or (not |power of d2 is held|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and n2 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
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
(declare-const n4 Bool)
(assert (= n4 (and (or |power of d1 is off'| |power of d1 is starting'| |power of d1 is up'|
    |power of d1 is held'|) (or (not |power of d1 is off'|) (not |power of d1 is starting'|)) (or
    (not |power of d1 is up'|) (and (not |power of d1 is off'|) (not |power of d1 is starting'|)))
    (or (not |power of d1 is held'|) (and (not |power of d1 is off'|)
    (not |power of d1 is starting'|) (not |power of d1 is up'|))) (or |leader of d1 is none'|
    |leader of d1 is d1'| |leader of d1 is d2'| |leader of d1 is d3'|) (or
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|)) (or (not |leader of d1 is d2'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|))) (or (not |leader of d1 is d3'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|) (not |leader of d1 is d2'|))) (or
    |number of d1 is 1'| |number of d1 is 2'| |number of d1 is 3'|) (or (not |number of d1 is 1'|)
    (not |number of d1 is 2'|)) (or (not |number of d1 is 3'|) (and (not |number of d1 is 1'|)
    (not |number of d1 is 2'|))) (or |next number of d1 is 1'| |next number of d1 is 2'|
    |next number of d1 is 3'|) (or (not |next number of d1 is 1'|) (not |next number of d1 is 2'|))
    (or (not |next number of d1 is 3'|) (and (not |next number of d1 is 1'|)
    (not |next number of d1 is 2'|))) (or |priority of d1 is 1'| |priority of d1 is 2'|
    |priority of d1 is 3'|) (or (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)) (or
    (not |priority of d1 is 3'|) (and (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)))
    (or |startup priority of d1 is 1'| |startup priority of d1 is 2'| |startup priority of d1 is 3'|)
    (or (not |startup priority of d1 is 1'|) (not |startup priority of d1 is 2'|)) (or
    (not |startup priority of d1 is 3'|) (and (not |startup priority of d1 is 1'|)
    (not |startup priority of d1 is 2'|))) (or |power of d2 is off'| |power of d2 is starting'|
    |power of d2 is up'| |power of d2 is held'|) (or (not |power of d2 is off'|)
    (not |power of d2 is starting'|)) (or (not |power of d2 is up'|) (and
    (not |power of d2 is off'|) (not |power of d2 is starting'|))) (or (not |power of d2 is held'|)
    (and (not |power of d2 is off'|) (not |power of d2 is starting'|) (not |power of d2 is up'|))))))
(declare-const n5 Bool)
(assert (= n5 (and n4 (or |leader of d2 is none'| |leader of d2 is d1'| |leader of d2 is d2'|
    |leader of d2 is d3'|) (or (not |leader of d2 is none'|) (not |leader of d2 is d1'|)) (or
    (not |leader of d2 is d2'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|))) (or
    (not |leader of d2 is d3'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|)
    (not |leader of d2 is d2'|))) (or |number of d2 is 1'| |number of d2 is 2'| |number of d2 is 3'|)
    (or (not |number of d2 is 1'|) (not |number of d2 is 2'|)) (or (not |number of d2 is 3'|) (and
    (not |number of d2 is 1'|) (not |number of d2 is 2'|))) (or |next number of d2 is 1'|
    |next number of d2 is 2'| |next number of d2 is 3'|) (or (not |next number of d2 is 1'|)
    (not |next number of d2 is 2'|)) (or (not |next number of d2 is 3'|) (and
    (not |next number of d2 is 1'|) (not |next number of d2 is 2'|))) (or |priority of d2 is 1'|
    |priority of d2 is 2'| |priority of d2 is 3'|) (or (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|)) (or (not |priority of d2 is 3'|) (and (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|))) (or |startup priority of d2 is 1'| |startup priority of d2 is 2'|
    |startup priority of d2 is 3'|) (or (not |startup priority of d2 is 1'|)
    (not |startup priority of d2 is 2'|)) (or (not |startup priority of d2 is 3'|) (and
    (not |startup priority of d2 is 1'|) (not |startup priority of d2 is 2'|))) (or
    |power of d3 is off'| |power of d3 is starting'| |power of d3 is up'| |power of d3 is held'|)
    (or (not |power of d3 is off'|) (not |power of d3 is starting'|)) (or (not |power of d3 is up'|)
    (and (not |power of d3 is off'|) (not |power of d3 is starting'|))) (or
    (not |power of d3 is held'|) (and (not |power of d3 is off'|) (not |power of d3 is starting'|)
    (not |power of d3 is up'|))))))
(declare-const n6 Bool)
(assert (= n6 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n7 Bool)
(assert (= n7 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n8 Bool)
(assert (= n8 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n9 Bool)
(assert (= n9 (and (or (not |power of d2 is up|) (not |power of d3 is up|) (not |d2--d3 plugged|))
    (or (not |power of d1 is up|) (not |power of d2 is up|) (not |power of d3 is up|)
    (not |d1--d2 plugged|) (not |d1--d3 plugged|)))))
(declare-const n10 Bool)
(assert (= n10 (and (or (not |power of d1 is up|) (not |power of d3 is up|) (not |d1--d3 plugged|))
    (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|) n9))))
(declare-const n11 Bool)
(assert (= n11 (and (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|))
    (or n9 n10))))
(declare-const n12 Bool)
(assert (= n12 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n13 Bool)
(assert (= n13 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n14 Bool)
(assert (= n14 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n15 Bool)
(assert (= n15 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n16 Bool)
(assert (= n16 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n17 Bool)
(assert (= n17 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n18 Bool)
(assert (= n18 (and |power of d2 is up| |leader of d2 is d2| (not n11))))
(declare-const n19 Bool)
(assert (= n19 (and |power of d3 is up| |leader of d3 is d3| (not n10))))
(declare-const n20 Bool)
(assert (= n20 (and (not n13) (not n18) (not n19))))
(declare-const n21 Bool)
(assert (= n21 (and (not n13) (or (not |power of d1 is up|) (not |leader of d1 is none|)
    |leader of d1 is d1| n18 n19 (and |power of d2 is up| (not |leader of d2 is none|) (not n11))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n10))))))
(declare-const n22 Bool)
(assert (= n22 (and |power of d1 is up| |leader of d1 is d1| (not n11))))
(declare-const n23 Bool)
(assert (= n23 (and |power of d3 is up| |leader of d3 is d3| (not n9))))
(declare-const n24 Bool)
(assert (= n24 (and (not n15) (not n22) (not n23))))
(declare-const n25 Bool)
(assert (= n25 (and (not n15) (or (not |power of d2 is up|) (not |leader of d2 is none|)
    |leader of d2 is d2| n22 n23 (and |power of d1 is up| (not |leader of d1 is none|) (not n11))
    (and |power of d3 is up| (not |leader of d3 is none|) (not n9))))))
(declare-const n26 Bool)
(assert (= n26 (and |power of d1 is up| |leader of d1 is d1| (not n10))))
(declare-const n27 Bool)
(assert (= n27 (and |power of d2 is up| |leader of d2 is d2| (not n9))))
(declare-const n28 Bool)
(assert (= n28 (and (not n17) (not n26) (not n27))))
(declare-const n29 Bool)
(assert (= n29 (and (not n17) (or (not |power of d3 is up|) (not |leader of d3 is none|)
    |leader of d3 is d3| n26 n27 (and |power of d1 is up| (not |leader of d1 is none|) (not n10))
    (and |power of d2 is up| (not |leader of d2 is none|) (not n9))))))
(declare-const n30 Bool)
(assert (= n30 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n31 Bool)
(assert (= n31 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n32 Bool)
(assert (= n32 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n31))))
(declare-const n33 Bool)
(assert (= n33 (and (or (not |number of d1 is 2|) (not |number of d2 is 3|)) (or
    (not |number of d1 is 1|) n30) (not n32))))
(declare-const n34 Bool)
(assert (= n34 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n35 Bool)
(assert (= n35 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n36 Bool)
(assert (= n36 (and |priority of d2 is 1| (not n35))))
(declare-const n37 Bool)
(assert (= n37 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n38 Bool)
(assert (= n38 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n39 Bool)
(assert (= n39 (and |priority of d1 is 1| (not n38))))
(declare-const n40 Bool)
(assert (= n40 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (not n33))) (not n37)
    (not n39))))
(declare-const n41 Bool)
(assert (= n41 (and (not n11) (not n25) (not n34) (not n36) (not n40))))
(declare-const n42 Bool)
(assert (= n42 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n43 Bool)
(assert (= n43 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n31))))
(declare-const n44 Bool)
(assert (= n44 (and (or (not |number of d1 is 2|) (not |number of d3 is 3|)) (or
    (not |number of d1 is 1|) n42) (not n43))))
(declare-const n45 Bool)
(assert (= n45 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n46 Bool)
(assert (= n46 (and |priority of d3 is 1| (not n35))))
(declare-const n47 Bool)
(assert (= n47 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n48 Bool)
(assert (= n48 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n49 Bool)
(assert (= n49 (and |priority of d1 is 1| (not n48))))
(declare-const n50 Bool)
(assert (= n50 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (not n44))) (not n47)
    (not n49))))
(declare-const n51 Bool)
(assert (= n51 (and (not n10) (not n29) (not n45) (not n46) (not n50))))
(declare-const n52 Bool)
(assert (= n52 (and (not n34) (not n36) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n32))))))
(declare-const n53 Bool)
(assert (= n53 (and (not n11) (not n21) (not n37) (not n39) (not n52))))
(declare-const n54 Bool)
(assert (= n54 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n30))))
(declare-const n55 Bool)
(assert (= n55 (and (or (not |number of d2 is 2|) (not |number of d3 is 3|)) (or
    (not |number of d2 is 1|) n42) (not n54))))
(declare-const n56 Bool)
(assert (= n56 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n57 Bool)
(assert (= n57 (and |priority of d3 is 1| (not n38))))
(declare-const n58 Bool)
(assert (= n58 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n59 Bool)
(assert (= n59 (and |priority of d2 is 1| (not n48))))
(declare-const n60 Bool)
(assert (= n60 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (not n55))) (not n58)
    (not n59))))
(declare-const n61 Bool)
(assert (= n61 (and (not n9) (not n29) (not n56) (not n57) (not n60))))
(declare-const n62 Bool)
(assert (= n62 (and (not n45) (not n46) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n43))))))
(declare-const n63 Bool)
(assert (= n63 (and (not n10) (not n21) (not n47) (not n49) (not n62))))
(declare-const n64 Bool)
(assert (= n64 (and (not n56) (not n57) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n54))))))
(declare-const n65 Bool)
(assert (= n65 (and (not n9) (not n25) (not n58) (not n59) (not n64))))
(declare-const n66 Bool)
(assert (= n66 (and |power of d1 is up| |leader of d1 is d1| (not n21) (not n41) (not n51))))
(declare-const n67 Bool)
(assert (= n67 (and |power of d2 is up| |leader of d2 is d2| (not n25) (not n53) (not n61))))
(declare-const n68 Bool)
(assert (= n68 (and |power of d3 is up| |leader of d3 is d3| (not n29) (not n63) (not n65))))
(declare-const n69 Bool)
(assert (= n69 (and |leader of d1 is d2| (not n11) n67)))
(declare-const n70 Bool)
(assert (= n70 (and |leader of d1 is d3| (not n10) n68)))
(declare-const n71 Bool)
(assert (= n71 (and |leader of d2 is d1| (not n11) n66)))
(declare-const n72 Bool)
(assert (= n72 (and |leader of d2 is d3| (not n9) n68)))
(declare-const n73 Bool)
(assert (= n73 (and |leader of d3 is d1| (not n10) n66)))
(declare-const n74 Bool)
(assert (= n74 (and |leader of d3 is d2| (not n9) n67)))
(declare-const n75 Bool)
(assert (= n75 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n76 Bool)
(assert (= n76 (and (not n15) (or (not |leader of d2 is d1|) n11) (or (not |leader of d2 is d3|) n9))))
(declare-const n77 Bool)
(assert (= n77 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n78 Bool)
(assert (= n78 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n79 Bool)
(assert (= n79 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n80 Bool)
(assert (= n80 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n14)
    (not n37) (not n39) (not n52))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n66 n69 n70 n76 n77 n78 n79))))
(declare-const n81 Bool)
(assert (= n81 (and (not n11) (not n75) (not n80))))
(declare-const n82 Bool)
(assert (= n82 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n83 Bool)
(assert (= n83 (and (not n17) (or (not |leader of d3 is d1|) n10) (or (not |leader of d3 is d2|) n9))))
(declare-const n84 Bool)
(assert (= n84 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n85 Bool)
(assert (= n85 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n86 Bool)
(assert (= n86 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n87 Bool)
(assert (= n87 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n16)
    (not n47) (not n49) (not n62))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n66 n69 n70 n83 n84 n85 n86))))
(declare-const n88 Bool)
(assert (= n88 (and (not n10) (not n82) (not n87))))
(declare-const n89 Bool)
(assert (= n89 (and |power of d1 is up| (not |leader of d1 is none|) (not n81) (not n88) (or n20
    (and (not n66) (not n69) (not n70))))))
(declare-const n90 Bool)
(assert (= n90 (and (not n13) (or (not |leader of d1 is d2|) n11) (or (not |leader of d1 is d3|) n10))))
(declare-const n91 Bool)
(assert (= n91 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n12)
    (not n34) (not n36) (not n40))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n67 n71 n72 n77 n78 n79 n90))))
(declare-const n92 Bool)
(assert (= n92 (and (not n11) (not n75) (not n91))))
(declare-const n93 Bool)
(assert (= n93 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n94 Bool)
(assert (= n94 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n95 Bool)
(assert (= n95 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n96 Bool)
(assert (= n96 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n97 Bool)
(assert (= n97 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n16)
    (not n58) (not n59) (not n64))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n67 n71 n72 n83 n94 n95 n96))))
(declare-const n98 Bool)
(assert (= n98 (and (not n9) (not n93) (not n97))))
(declare-const n99 Bool)
(assert (= n99 (and |power of d2 is up| (not |leader of d2 is none|) (not n92) (not n98) (or n24
    (and (not n67) (not n71) (not n72))))))
(declare-const n100 Bool)
(assert (= n100 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n12)
    (not n45) (not n46) (not n50))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n68 n73 n74 n84 n85 n86 n90))))
(declare-const n101 Bool)
(assert (= n101 (and (not n10) (not n82) (not n100))))
(declare-const n102 Bool)
(assert (= n102 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n14)
    (not n56) (not n57) (not n60))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n68 n73 n74 n76 n94 n95 n96))))
(declare-const n103 Bool)
(assert (= n103 (and (not n9) (not n93) (not n102))))
(declare-const n104 Bool)
(assert (= n104 (and |power of d3 is up| (not |leader of d3 is none|) (not n101) (not n103) (or n28
    (and (not n68) (not n73) (not n74))))))
(declare-const n105 Bool)
(assert (= n105 (and |power of d1 is up| (not n21) (not n41) (not n51) (not n81) (not n88) (not n89))))
(declare-const n106 Bool)
(assert (= n106 (and |power of d1 is up| (not n11) (not n25) (not n53) (not n61) (not n88) (not n89)
    (or n75 n80))))
(declare-const n107 Bool)
(assert (= n107 (and |power of d1 is up| (not n10) (not n29) (not n63) (not n65) (not n81) (not n89)
    (or n82 n87))))
(declare-const n108 Bool)
(assert (= n108 (ite |power of d1 is up| (and (not n105) (not n106) (not n107))
    |leader of d1 is none|)))
(declare-const n109 Bool)
(assert (= n109 (ite |power of d1 is up| n105 |leader of d1 is d1|)))
(declare-const n110 Bool)
(assert (= n110 (and |power of d2 is up| (not n11) (not n21) (not n41) (not n51) (not n98) (not n99)
    (or n75 n91))))
(declare-const n111 Bool)
(assert (= n111 (and |power of d2 is up| (not n25) (not n53) (not n61) (not n92) (not n98) (not n99))))
(declare-const n112 Bool)
(assert (= n112 (and |power of d2 is up| (not n9) (not n29) (not n63) (not n65) (not n92) (not n99)
    (or n93 n97))))
(declare-const n113 Bool)
(assert (= n113 (ite |power of d2 is up| (and (not n110) (not n111) (not n112))
    |leader of d2 is none|)))
(declare-const n114 Bool)
(assert (= n114 (ite |power of d2 is up| n111 |leader of d2 is d2|)))
(declare-const n115 Bool)
(assert (= n115 (and |power of d3 is up| (not n10) (not n21) (not n41) (not n51) (not n103)
    (not n104) (or n82 n100))))
(declare-const n116 Bool)
(assert (= n116 (and |power of d3 is up| (not n9) (not n25) (not n53) (not n61) (not n101)
    (not n104) (or n93 n102))))
(declare-const n117 Bool)
(assert (= n117 (and |power of d3 is up| (not n29) (not n63) (not n65) (not n101) (not n103)
    (not n104))))
(declare-const n118 Bool)
(assert (= n118 (ite |power of d3 is up| (and (not n115) (not n116) (not n117))
    |leader of d3 is none|)))
(declare-const n119 Bool)
(assert (= n119 (ite |power of d3 is up| n117 |leader of d3 is d3|)))
(declare-const n120 Bool)
(assert (= n120 (and (not n37) (not n39) (or |d1 senior to d2'| (and (not |d2 senior to d1'|)
    (not n33))))))
(declare-const n121 Bool)
(assert (= n121 (and (not n11) (not n25) (not n34) (not n36) (not n120))))
(declare-const n122 Bool)
(assert (= n122 (and (not n47) (not n49) (or |d1 senior to d3'| (and (not |d3 senior to d1'|)
    (not n44))))))
(declare-const n123 Bool)
(assert (= n123 (and (not n10) (not n29) (not n45) (not n46) (not n122))))
(declare-const n124 Bool)
(assert (= n124 (and (not n34) (not n36) (or |d2 senior to d1'| (and (not |d1 senior to d2'|)
    (not n32))))))
(declare-const n125 Bool)
(assert (= n125 (and (not n11) (not n21) (not n37) (not n39) (not n124))))
(declare-const n126 Bool)
(assert (= n126 (and (not n58) (not n59) (or |d2 senior to d3'| (and (not |d3 senior to d2'|)
    (not n55))))))
(declare-const n127 Bool)
(assert (= n127 (and (not n9) (not n29) (not n56) (not n57) (not n126))))
(declare-const n128 Bool)
(assert (= n128 (and (not n45) (not n46) (or |d3 senior to d1'| (and (not |d1 senior to d3'|)
    (not n43))))))
(declare-const n129 Bool)
(assert (= n129 (and (not n10) (not n21) (not n47) (not n49) (not n128))))
(declare-const n130 Bool)
(assert (= n130 (and (not n56) (not n57) (or |d3 senior to d2'| (and (not |d2 senior to d3'|)
    (not n54))))))
(declare-const n131 Bool)
(assert (= n131 (and (not n9) (not n25) (not n58) (not n59) (not n130))))
(declare-const n132 Bool)
(assert (= n132 (and |power of d1 is up| |leader of d1 is d1| (not n21) (not n121) (not n123))))
(declare-const n133 Bool)
(assert (= n133 (and |power of d2 is up| |leader of d2 is d2| (not n25) (not n125) (not n127))))
(declare-const n134 Bool)
(assert (= n134 (and |power of d3 is up| |leader of d3 is d3| (not n29) (not n129) (not n131))))
(declare-const n135 Bool)
(assert (= n135 (and |leader of d1 is d2| (not n11) n133)))
(declare-const n136 Bool)
(assert (= n136 (and |leader of d1 is d3| (not n10) n134)))
(declare-const n137 Bool)
(assert (= n137 (and |leader of d2 is d1| (not n11) n132)))
(declare-const n138 Bool)
(assert (= n138 (and |leader of d2 is d3| (not n9) n134)))
(declare-const n139 Bool)
(assert (= n139 (and |leader of d3 is d1| (not n10) n132)))
(declare-const n140 Bool)
(assert (= n140 (and |leader of d3 is d2| (not n9) n133)))
(declare-const n141 Bool)
(assert (= n141 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n14)
    (not n37) (not n39) (not n124))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n76 n77 n78 n79 n132 n135 n136))))
(declare-const n142 Bool)
(assert (= n142 (and (not n11) (not n75) (not n141))))
(declare-const n143 Bool)
(assert (= n143 (and (or (not |power of d1 is up|) (not |leader of d1 is none|) (and (not n16)
    (not n47) (not n49) (not n128))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n83 n84 n85 n86 n132 n135 n136))))
(declare-const n144 Bool)
(assert (= n144 (and (not n10) (not n82) (not n143))))
(declare-const n145 Bool)
(assert (= n145 (and |power of d1 is up| (not |leader of d1 is none|) (not n142) (not n144) (or n20
    (and (not n132) (not n135) (not n136))))))
(declare-const n146 Bool)
(assert (= n146 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n12)
    (not n34) (not n36) (not n120))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d2 is up|) |leader of d2 is none| n77 n78 n79 n90 n133 n137 n138))))
(declare-const n147 Bool)
(assert (= n147 (and (not n11) (not n75) (not n146))))
(declare-const n148 Bool)
(assert (= n148 (and (or (not |power of d2 is up|) (not |leader of d2 is none|) (and (not n16)
    (not n58) (not n59) (not n130))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n83 n94 n95 n96 n133 n137 n138))))
(declare-const n149 Bool)
(assert (= n149 (and (not n9) (not n93) (not n148))))
(declare-const n150 Bool)
(assert (= n150 (and |power of d2 is up| (not |leader of d2 is none|) (not n147) (not n149) (or n24
    (and (not n133) (not n137) (not n138))))))
(declare-const n151 Bool)
(assert (= n151 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n12)
    (not n45) (not n46) (not n122))) (or (not |power of d1 is up|) |leader of d1 is none|
    (not |power of d3 is up|) |leader of d3 is none| n84 n85 n86 n90 n134 n139 n140))))
(declare-const n152 Bool)
(assert (= n152 (and (not n10) (not n82) (not n151))))
(declare-const n153 Bool)
(assert (= n153 (and (or (not |power of d3 is up|) (not |leader of d3 is none|) (and (not n14)
    (not n56) (not n57) (not n126))) (or (not |power of d2 is up|) |leader of d2 is none|
    (not |power of d3 is up|) |leader of d3 is none| n76 n94 n95 n96 n134 n139 n140))))
(declare-const n154 Bool)
(assert (= n154 (and (not n9) (not n93) (not n153))))
(declare-const n155 Bool)
(assert (= n155 (and |power of d3 is up| (not |leader of d3 is none|) (not n152) (not n154) (or n28
    (and (not n134) (not n139) (not n140))))))
(declare-const n156 Bool)
(assert (= n156 (and |power of d1 is up| (not n21) (not n121) (not n123) (not n142) (not n144)
    (not n145))))
(declare-const n157 Bool)
(assert (= n157 (and |power of d1 is up| (not n11) (not n25) (not n125) (not n127) (not n144)
    (not n145) (or n75 n141))))
(declare-const n158 Bool)
(assert (= n158 (and |power of d1 is up| (not n10) (not n29) (not n129) (not n131) (not n142)
    (not n145) (or n82 n143))))
(declare-const n159 Bool)
(assert (= n159 (and |power of d2 is up| (not n11) (not n21) (not n121) (not n123) (not n149)
    (not n150) (or n75 n146))))
(declare-const n160 Bool)
(assert (= n160 (and |power of d2 is up| (not n25) (not n125) (not n127) (not n147) (not n149)
    (not n150))))
(declare-const n161 Bool)
(assert (= n161 (and |power of d2 is up| (not n9) (not n29) (not n129) (not n131) (not n147)
    (not n150) (or n93 n148))))
(declare-const n162 Bool)
(assert (= n162 (and |power of d3 is up| (not n10) (not n21) (not n121) (not n123) (not n154)
    (not n155) (or n82 n151))))
(declare-const n163 Bool)
(assert (= n163 (and |power of d3 is up| (not n9) (not n25) (not n125) (not n127) (not n152)
    (not n155) (or n93 n153))))
(declare-const n164 Bool)
(assert (= n164 (and |power of d3 is up| (not n29) (not n129) (not n131) (not n152) (not n154)
    (not n155))))
(declare-const n165 Bool)
(assert (= n165 (and |power of d1 is up| (not n81) (not n88) (not n89) (or n108 n109))))
(declare-const n166 Bool)
(assert (= n166 (and |power of d2 is up| (not n92) (not n98) (not n99) (or n113 n114))))
(declare-const n167 Bool)
(assert (= n167 (and |power of d3 is up| (not n101) (not n103) (not n104) (or n118 n119))))
(declare-const n168 Bool)
(assert (= n168 (and (= (and (not n81) (not n88)) (and (not n142) (not n144))) (= n89 n145) (= (and
    (not n92) (not n98)) (and (not n147) (not n149))) (= n99 n150) (= (and (not n101) (not n103))
    (and (not n152) (not n154))) (= n104 n155) (or (and |power of d1 is off| (not n81) (not n88)
    (not n89) (not n142) (not n144) (not n145)) (and (or n89 (and |power of d1 is starting|
    (not n81) (not n88))) (or n145 (and |power of d1 is starting| (not n142) (not n144)))) (and
    |power of d1 is up| (not n81) (not n88) (not n89) (not n142) (not n144) (not n145)) (and
    (not n89) (or |power of d1 is held| n81 n88) (not n145) (or |power of d1 is held| n142 n144)))
    (or (and n108 (ite |power of d1 is up| (and (not n156) (not n157) (not n158))
    |leader of d1 is none|)) (and n109 (ite |power of d1 is up| n156 |leader of d1 is d1|)) (and
    (ite |power of d1 is up| n106 |leader of d1 is d2|) (ite |power of d1 is up| n157
    |leader of d1 is d2|)) (and (ite |power of d1 is up| n107 |leader of d1 is d3|) (ite
    |power of d1 is up| n158 |leader of d1 is d3|))) (or (and |power of d2 is off| (not n92)
    (not n98) (not n99) (not n147) (not n149) (not n150)) (and (or n99 (and
    |power of d2 is starting| (not n92) (not n98))) (or n150 (and |power of d2 is starting|
    (not n147) (not n149)))) (and |power of d2 is up| (not n92) (not n98) (not n99) (not n147)
    (not n149) (not n150)) (and (not n99) (or |power of d2 is held| n92 n98) (not n150) (or
    |power of d2 is held| n147 n149))) (or (and n113 (ite |power of d2 is up| (and (not n159)
    (not n160) (not n161)) |leader of d2 is none|)) (and (ite |power of d2 is up| n110
    |leader of d2 is d1|) (ite |power of d2 is up| n159 |leader of d2 is d1|)) (and n114 (ite
    |power of d2 is up| n160 |leader of d2 is d2|)) (and (ite |power of d2 is up| n112
    |leader of d2 is d3|) (ite |power of d2 is up| n161 |leader of d2 is d3|))) (or (and
    |power of d3 is off| (not n101) (not n103) (not n104) (not n152) (not n154) (not n155)) (and (or
    n104 (and |power of d3 is starting| (not n101) (not n103))) (or n155 (and
    |power of d3 is starting| (not n152) (not n154)))) (and |power of d3 is up| (not n101)
    (not n103) (not n104) (not n152) (not n154) (not n155)) (and (not n104) (or
    |power of d3 is held| n101 n103) (not n155) (or |power of d3 is held| n152 n154))) (or (and n118
    (ite |power of d3 is up| (and (not n162) (not n163) (not n164)) |leader of d3 is none|)) (and
    (ite |power of d3 is up| n115 |leader of d3 is d1|) (ite |power of d3 is up| n162
    |leader of d3 is d1|)) (and (ite |power of d3 is up| n116 |leader of d3 is d2|) (ite
    |power of d3 is up| n163 |leader of d3 is d2|)) (and n119 (ite |power of d3 is up| n164
    |leader of d3 is d3|))) (or (not n165) (not n166) (= (and |d1 senior to d2| (not n89) (not n99))
    (and |d1 senior to d2'| (not n145) (not n150)))) (or (not n165) (not n167) (= (and
    |d1 senior to d3| (not n89) (not n104)) (and |d1 senior to d3'| (not n145) (not n155)))) (or
    (not n165) (not n166) (= (and |d2 senior to d1| (not n89) (not n99)) (and |d2 senior to d1'|
    (not n145) (not n150)))) (or (not n166) (not n167) (= (and |d2 senior to d3| (not n99)
    (not n104)) (and |d2 senior to d3'| (not n150) (not n155)))) (or (not n165) (not n167) (= (and
    |d3 senior to d1| (not n89) (not n104)) (and |d3 senior to d1'| (not n145) (not n155)))) (or
    (not n166) (not n167) (= (and |d3 senior to d2| (not n99) (not n104)) (and |d3 senior to d2'|
    (not n150) (not n155)))))))
(declare-const n169 Bool)
(assert (= n169 (and n3 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
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
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|))) (or
    |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up| |leader of d2 is none|) (or
    |power of d3 is up| |leader of d3 is none|) (or (not |d1 senior to d2|) (and
    (not |d2 senior to d1|) (not n6) (not n7))) (or (not |d1 senior to d2|) |d1 senior to d3|
    |d3 senior to d2| n8) (or (not |d1 senior to d3|) (and (not |d3 senior to d1|) (not n6) (not n8)))
    (or |d1 senior to d2| (not |d1 senior to d3|) |d2 senior to d3| n7) (or (not |d2 senior to d1|)
    (and (not |d1 senior to d2|) (not n6) (not n7))) (or (not |d2 senior to d1|) |d2 senior to d3|
    |d3 senior to d1| n8) (or (not |d2 senior to d3|) (and (not |d3 senior to d2|) (not n7) (not n8)))
    (or |d1 senior to d3| |d2 senior to d1| (not |d2 senior to d3|) n6) (or (not |d3 senior to d1|)
    (and (not |d1 senior to d3|) (not n6) (not n8))) (or |d2 senior to d1| (not |d3 senior to d1|)
    |d3 senior to d2| n7) (or (not |d3 senior to d2|) (and (not |d2 senior to d3|) (not n7) (not n8)))
    (or |d1 senior to d2| |d3 senior to d1| (not |d3 senior to d2|) n6))))
(declare-const n170 Bool)
(assert (= n170 (and n5 (or |leader of d3 is none'| |leader of d3 is d1'| |leader of d3 is d2'|
    |leader of d3 is d3'|) (or (not |leader of d3 is none'|) (not |leader of d3 is d1'|)) (or
    (not |leader of d3 is d2'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|))) (or
    (not |leader of d3 is d3'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|)
    (not |leader of d3 is d2'|))) (or |number of d3 is 1'| |number of d3 is 2'| |number of d3 is 3'|)
    (or (not |number of d3 is 1'|) (not |number of d3 is 2'|)) (or (not |number of d3 is 3'|) (and
    (not |number of d3 is 1'|) (not |number of d3 is 2'|))) (or |next number of d3 is 1'|
    |next number of d3 is 2'| |next number of d3 is 3'|) (or (not |next number of d3 is 1'|)
    (not |next number of d3 is 2'|)) (or (not |next number of d3 is 3'|) (and
    (not |next number of d3 is 1'|) (not |next number of d3 is 2'|))) (or |priority of d3 is 1'|
    |priority of d3 is 2'| |priority of d3 is 3'|) (or (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|)) (or (not |priority of d3 is 3'|) (and (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|))) (or |startup priority of d3 is 1'| |startup priority of d3 is 2'|
    |startup priority of d3 is 3'|) (or (not |startup priority of d3 is 1'|)
    (not |startup priority of d3 is 2'|)) (or (not |startup priority of d3 is 3'|) (and
    (not |startup priority of d3 is 1'|) (not |startup priority of d3 is 2'|))) (or
    (not |d1 senior to d2'|) (and (not |d2 senior to d1'|) (not n6) (not n7))) (or
    (not |d1 senior to d2'|) |d1 senior to d3'| |d3 senior to d2'| n8) (or (not |d1 senior to d3'|)
    (and (not |d3 senior to d1'|) (not n6) (not n8))) (or |d1 senior to d2'|
    (not |d1 senior to d3'|) |d2 senior to d3'| n7) (or (not |d2 senior to d1'|) (and
    (not |d1 senior to d2'|) (not n6) (not n7))) (or (not |d2 senior to d1'|) |d2 senior to d3'|
    |d3 senior to d1'| n8) (or (not |d2 senior to d3'|) (and (not |d3 senior to d2'|) (not n7)
    (not n8))) (or |d1 senior to d3'| |d2 senior to d1'| (not |d2 senior to d3'|) n6) (or
    (not |d3 senior to d1'|) (and (not |d1 senior to d3'|) (not n6) (not n8))) (or
    |d2 senior to d1'| (not |d3 senior to d1'|) |d3 senior to d2'| n7) (or (not |d3 senior to d2'|)
    (and (not |d2 senior to d3'|) (not n7) (not n8))) (or |d1 senior to d2'| |d3 senior to d1'|
    (not |d3 senior to d2'|) n6))))
(declare-const n171 Bool)
(assert (= n171 (and (not |leader of d2 is none|) (not |leader of d2 is d2|))))
(declare-const n172 Bool)
(assert (= n172 (and (not |leader of d3 is none|) (not |leader of d3 is d3|))))
; Every variable has one value, and the laws of all states apply.
(assert n169)
; A second state has an order of seniority of its own (marked '), and is the same else.
(assert n170)
; Devices that lead or are fresh have the same order of seniority among themselves in both states.
(assert (and (or (not |power of d1 is up|) n1 (not |power of d2 is up|) n171 (= |d1 senior to d2|
    |d1 senior to d2'|)) (or (not |power of d1 is up|) n1 (not |power of d3 is up|) n172 (=
    |d1 senior to d3| |d1 senior to d3'|)) (or (not |power of d1 is up|) n1
    (not |power of d2 is up|) n171 (= |d2 senior to d1| |d2 senior to d1'|)) (or
    (not |power of d2 is up|) (not |power of d3 is up|) n171 n172 (= |d2 senior to d3|
    |d2 senior to d3'|)) (or (not |power of d1 is up|) n1 (not |power of d3 is up|) n172 (=
    |d3 senior to d1| |d3 senior to d1'|)) (or (not |power of d2 is up|) (not |power of d3 is up|)
    n171 n172 (= |d3 senior to d2| |d3 senior to d2'|))))
; And this is false: a pass holds, restarts and admits the same devices in both; and again those
; that lead or are fresh have the same order among themselves.
(assert (not n168))
(check-sat)
(exit)
